/** Code and maths, in which braces mean themselves; the rule for maths is the chapters' own. */
const LITERAL = /(?<!`)(`+)(?!`)[\s\S]*?(?<!`)\1(?!`)|\$\$[\s\S]+?\$\$|\$(?!\s)(?:[^$\\]|\\.)*?(?<!\s)\$(?!\d)|\\./g;
const HOLE = /\{([A-Za-z][\w.]*)\}/g;

/** A template with each `{name}` that `values` has replaced by its text; maths, code and unknown names stay as they are. */
export const fill = (template: string, values: Readonly<Record<string, string>>): string =>
  outsideLiterals(template, (text) =>
    text.replace(HOLE, (hole, name: string) => (Object.hasOwn(values, name) ? values[name]! : hole)),
  );

/** A hole of a template: the name in it, and where its brace stands. */
export interface Hole {
  readonly name: string;
  readonly at: number;
}

/** The holes of a template, those in maths and code left out. */
export function holesIn(template: string): Hole[] {
  const holes: Hole[] = [];
  outsideLiterals(template, (text, from) => {
    for (const hole of text.matchAll(HOLE)) holes.push({ name: hole[1]!, at: from + hole.index });
    return text;
  });
  return holes;
}

function outsideLiterals(template: string, change: (text: string, from: number) => string): string {
  let done = "";
  let from = 0;
  for (const literal of template.matchAll(LITERAL)) {
    done += change(template.slice(from, literal.index), from) + literal[0];
    from = literal.index + literal[0].length;
  }
  return done + change(template.slice(from), from);
}
