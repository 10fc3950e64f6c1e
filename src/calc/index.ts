export { catalogue } from "./catalogue/index.ts";
export * from "./limits.ts";
export * from "./quantity.ts";
