export { FormulaCellElement } from "./element.ts";
export { isFoundBy } from "./find.ts";
