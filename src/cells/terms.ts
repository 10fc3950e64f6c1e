import type { Term } from "./known.ts";

/** A term's forms, British and American side by side, its first form first. */
export const termFormsOf = (term: Term): readonly (readonly [british: string, american: string])[] => [
  [term.british, term.american],
  ...term.forms,
];

/** Whether two words are the same but for the case of the first letter. */
export const sameForm = (a: string, b: string): boolean => a.slice(1) === b.slice(1) && lower(a) === lower(b);

/**
 * The British and the American word for what an author wrote of a term, with its capital kept; the text itself, twice,
 * where the glossary has no such form.
 */
export function termForms(term: Term, text: string): { british: string; american: string } {
  const pair = termFormsOf(term).find((each) => each.some((form) => sameForm(form, text)));
  if (!pair) return { british: text, american: text };
  const capital = text.charAt(0) !== lower(text);
  const [british, american] = pair.map((form) => (capital ? form.charAt(0).toUpperCase() + form.slice(1) : form));
  return { british: british!, american: american! };
}

const lower = (text: string) => text.charAt(0).toLowerCase();
