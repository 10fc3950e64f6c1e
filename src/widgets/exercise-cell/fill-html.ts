import { escaped } from "../escaped.ts";

/** What braces mean themselves in: tags, code, and the source that typeset maths carries. */
const LITERAL = /<(code|annotation)\b[^>]*>[\s\S]*?<\/\1>|<[^>]*>/g;
const HOLE = /\{([A-Za-z][\w.]*)\}/g;

/** Built HTML with each `{name}` that `values` has replaced by its text, made safe; unknown names stay as they are. */
export function fillHtml(template: string, values: Readonly<Record<string, string>>): string {
  const filled = (text: string): string =>
    text.replace(HOLE, (hole, name: string) => (Object.hasOwn(values, name) ? escaped(values[name]!) : hole));
  let done = "";
  let from = 0;
  for (const literal of template.matchAll(LITERAL)) {
    done += filled(template.slice(from, literal.index)) + literal[0];
    from = literal.index + literal[0].length;
  }
  return done + filled(template.slice(from));
}
