/**
 * Where each character of a scalar's value stands in its source, whatever its style: quotes, escapes, folded lines and
 * indentation are passed over.
 *
 * @returns offsets in `source`, one for each character of `value` and one for its end
 */
export function aligned(source: string, value: string): number[] {
  const style = source[0] === '"' || source[0] === "'" ? source[0] : "";
  const offsets: number[] = [];
  let at = contentStart(source, style);
  for (const sign of value) {
    const found = find(source, at, sign, style);
    for (let i = 0; i < sign.length; i++) offsets.push(Math.min(found.at + i, source.length));
    at = found.at + found.length;
  }
  offsets.push(Math.min(at, source.length));
  return offsets;
}

interface Found {
  readonly at: number;
  /** Characters of the source that stand for the sign. */
  readonly length: number;
}

const isSpace = (sign: string | undefined) => sign === " " || sign === "\n";
const escapeLengths: Readonly<Record<string, number>> = { x: 4, u: 6, U: 10 };

function contentStart(source: string, style: string): number {
  if (style) return 1;
  return /^[|>][^\n]*\n/.exec(source)?.[0].length ?? 0;
}

function find(source: string, from: number, sign: string, style: string): Found {
  if (isSpace(sign) && isSpace(source[from])) return { at: from, length: 1 };
  let at = from;
  while (isSpace(source[at]) || (style === '"' && source[at] === "\\" && isSpace(source[at + 1]))) at++;
  if (style === '"' && source[at] === "\\") return { at, length: escapeLengths[source[at + 1] ?? ""] ?? 2 };
  if (style === "'" && source.startsWith("''", at)) return { at, length: 2 };
  return source.startsWith(sign, at) ? { at, length: sign.length } : { at: from, length: 0 };
}
