// The school's own numbers as a form.
export { count, SchoolFormElement } from "./element.ts";
