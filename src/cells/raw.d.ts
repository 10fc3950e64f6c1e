/** A file's text, put into the bundle at build. */
declare module "*.yaml?raw" {
  const text: string;
  export default text;
}
declare module "*.md?raw" {
  const text: string;
  export default text;
}
