/** Text safe to stand in HTML, in an attribute too. */
export { escapeHtml as escaped } from "../cells/escape-html.ts";
