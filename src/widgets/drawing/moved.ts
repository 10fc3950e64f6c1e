import type { Layer } from "./panel.ts";

/** Columns of a mark in pixels, or of words. */
export type Channels = Readonly<Record<string, readonly unknown[]>>;

/**
 * Moves the elements of a mark to other rows by the attributes Plot sets on them, where it is as easy as that: as many
 * rows as before, each an element of its own. A test holds it to what Plot draws afresh.
 *
 * @returns whether it was
 */
export function moved({ kind }: Layer, { x, y, text }: Channels, group: SVGElement): boolean {
  const elements = group.children;
  if (kind === "upright" && x!.length === elements.length)
    each(elements, (line, i) => put(line, { x1: x![i], x2: x![i] }));
  else if (kind === "dot" && x!.length === elements.length)
    each(elements, (dot, i) => put(dot, { cx: x![i], cy: y![i] }));
  else if (kind === "text" && x!.length === elements.length)
    each(elements, (words, i) => {
      put(words, { transform: `translate(${x![i]},${y![i]})` });
      if (words.textContent !== text![i]) words.textContent = String(text![i]);
    });
  else return false;
  return true;
}

function each(elements: HTMLCollection, run: (element: Element, i: number) => void): void {
  for (let i = 0; i < elements.length; i++) run(elements[i]!, i);
}

function put(element: Element, attributes: Record<string, unknown>): void {
  for (const name in attributes) element.setAttribute(name, String(attributes[name]));
}
