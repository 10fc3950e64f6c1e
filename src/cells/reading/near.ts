import { nearIn } from "../expressions/index.ts";

const LONGEST = 40;
const MOST_LISTED = 12;

/** The name of a list that a misspelt name most likely meant. */
export const nearest = (name: string, names: readonly string[]): string | undefined =>
  name.length > LONGEST ? undefined : nearIn(name, names)[0];

/** A mend that names the nearest of the names, or lists them where they are few. */
export function didYouMean(name: string, names: readonly string[]): string {
  const near = nearest(name, names);
  if (near !== undefined) return `Did you mean '${near}'?`;
  if (names.length === 0) return "There are none to choose from yet.";
  if (names.length > MOST_LISTED) return "Mend its spelling.";
  return names.length === 1 ? `Write '${names[0]}'.` : `Choose from: ${names.join(", ")}.`;
}

/** What an author wrote, short enough for a message. */
export function quoted(text: string): string {
  const line = text.replace(/\s+/g, " ");
  return `'${line.length > LONGEST ? `${line.slice(0, LONGEST - 1)}…` : line}'`;
}
