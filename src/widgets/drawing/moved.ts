import { say } from "../said.ts";
import type { Layer } from "./panel.ts";

/** Columns of a mark in pixels, or of words. */
export type Channels = Readonly<Record<string, readonly unknown[]>>;

/**
 * Moves the elements of a mark to other rows by the attributes Plot sets on them, where it is as easy as that: one path,
 * or as many elements as before. A test holds it to what Plot draws afresh.
 *
 * @returns whether it was
 */
export function moved({ kind }: Layer, { x, y, x1, y1, y2, text }: Channels, group: SVGElement): boolean {
  const elements = group.children;
  if (kind === "line") put(elements[0]!, "d", pathThrough(x as number[], y as number[]));
  else if (kind === "fill") put(elements[0]!, "d", pathAround(x1 as number[], y1 as number[], y2 as number[]));
  else if (elements.length !== x?.length) return false;
  else if (kind === "upright") each(elements, (line, i) => putBoth(line, ["x1", x[i]], ["x2", x[i]]));
  else if (kind === "dot") each(elements, (dot, i) => putBoth(dot, ["cx", x[i]], ["cy", y![i]]));
  else if (kind === "text")
    each(elements, (words, i) => {
      put(words, "transform", `translate(${x[i]},${y![i]})`);
      say(words, String(text![i]));
    });
  else return false;
  return true;
}

const thousandth = (pixels: number): number => Math.round(pixels * 1000) / 1000;

/** A path of straight stretches, to a thousandth of a pixel. */
function pathThrough(x: readonly number[], y: readonly number[]): string {
  let path = "";
  for (let i = 0; i < x.length; i++) path += `${i ? "L" : "M"}${thousandth(x[i]!)},${thousandth(y[i]!)}`;
  return path;
}

/** The same out along one line and back along the other. */
function pathAround(x: readonly number[], y1: readonly number[], y2: readonly number[]): string {
  let path = pathThrough(x, y2);
  for (let i = x.length - 1; i >= 0; i--) path += `L${thousandth(x[i]!)},${thousandth(y1[i]!)}`;
  return `${path}Z`;
}

function each(elements: HTMLCollection, run: (element: Element, i: number) => void): void {
  for (let i = 0; i < elements.length; i++) run(elements[i]!, i);
}

type Attribute = readonly [name: string, value: unknown];

function putBoth(element: Element, one: Attribute, other: Attribute): void {
  put(element, ...one);
  put(element, ...other);
}

function put(element: Element, name: string, value: unknown): void {
  element.setAttribute(name, String(value));
}
