import type { FigureTable } from "./figure.ts";
import { headOf } from "./figure-table.ts";

/** What a saved file says of where it comes from. */
export interface Origin {
  /** 'Figure 1: Rate and radius against bank'. */
  readonly title: string;
  /** The values it shows: 'True airspeed 95 kt, bank 15°'. */
  readonly values: string;
  readonly aircraft: string;
  readonly model: string;
  /** The day, as '2031-05-04'. */
  readonly date: string;
}

/**
 * The table as CSV (RFC 4180, UTF-8 with its mark): where it comes from, a header with units, the rows.
 * A text that a spreadsheet would take for a formula is made plain text.
 */
export function csvOf({ columns, rows }: FigureTable, origin: Origin): string {
  const lines: (readonly (string | number | null)[])[] = [
    [origin.title],
    ["Shown", origin.values],
    ["Aircraft", origin.aircraft],
    ["Model", origin.model],
    ["Saved", origin.date],
    ["Ground study only"],
    [],
    columns.map(headOf),
    ...rows.map((row) => row.map((value, i) => rounded(value, columns[i]!.digits))),
  ];
  return `\uFEFF${lines.map((line) => line.map(field).join(",")).join("\r\n")}\r\n`;
}

const rounded = (value: number | null, digits: number): number | null =>
  value === null || !Number.isFinite(value) ? null : Number(value.toFixed(digits)) + 0;

function field(value: string | number | null): string {
  if (value === null) return "";
  if (typeof value === "number") return String(value);
  const text = /^[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

const INHERITED = [
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linecap",
  "stroke-linejoin",
  "paint-order",
  "shape-rendering",
  "font-family",
  "font-size",
  "font-weight",
  "font-variant-numeric",
  "text-anchor",
] as const;

const SVG = "http://www.w3.org/2000/svg";
const HEAD = 34;
const LINE = 16;
const EDGE = 16;

/** The drawing as a file of its own: computed values in the place of our stylesheet, title above, origin beneath. */
export function standalone(svg: SVGSVGElement, origin: Origin): SVGSVGElement {
  const { width, height } = svg.viewBox.baseVal;
  const lines = [
    ...wrapped(`${origin.values}. ${origin.model}`, Math.floor(width / 5.6)),
    `Ground study only. ${origin.date}`,
  ];
  const inner = svg.cloneNode(true) as SVGSVGElement;
  inline(svg, inner);
  const whole = svg.ownerDocument.createElementNS(SVG, "svg");
  const size = { width: width + 2 * EDGE, height: HEAD + height + lines.length * LINE + 2 * EDGE };
  set(whole, { xmlns: SVG, ...size, viewBox: `0 0 ${size.width} ${size.height}` });
  set(inner, { x: EDGE, y: EDGE + HEAD - 8, width, height });
  const style = getComputedStyle(svg);
  const paper = style.getPropertyValue("background-color");
  whole.append(element(svg, "title", {}, origin.title), element(svg, "rect", { ...size, fill: paper }), inner);
  const face = { "font-family": getComputedStyle(svg.querySelector("text") ?? svg).fontFamily, fill: style.color };
  whole.append(
    element(svg, "text", { x: EDGE, y: EDGE + 14, "font-size": 15, "font-weight": 600, ...face }, origin.title),
  );
  lines.forEach((words, i) => {
    whole.append(
      element(svg, "text", { x: EDGE, y: EDGE + HEAD + height + (i + 1) * LINE, "font-size": 11, ...face }, words),
    );
  });
  return whole;
}

/** Sets what an element looks like as attributes, where it differs from its parent's; leaves out what doesn't show. */
function inline(from: Element, to: Element, above?: CSSStyleDeclaration): void {
  const style = getComputedStyle(from);
  if (style.display === "none") {
    to.remove();
    return;
  }
  for (const name of INHERITED) {
    const value = style.getPropertyValue(name);
    if (value !== above?.getPropertyValue(name)) to.setAttribute(name, value);
  }
  for (const name of ["class", "aria-label", "aria-hidden"]) to.removeAttribute(name);
  const copies = [...to.children];
  [...from.children].forEach((child, i) => {
    inline(child, copies[i]!, style);
  });
}

/** The same as a picture, two device pixels to one of the drawing. */
export async function pictureOf(whole: SVGSVGElement, times = 2): Promise<Blob> {
  const address = URL.createObjectURL(svgFile(whole));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = Object.assign(document.createElement("canvas"), {
      width: Number(whole.getAttribute("width")) * times,
      height: Number(whole.getAttribute("height")) * times,
    });
    canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((done, fail) => {
      canvas.toBlob((blob) => (blob ? done(blob) : fail(new Error("no picture could be made"))), "image/png");
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}

export const svgFile = (whole: SVGSVGElement): Blob =>
  new Blob([new XMLSerializer().serializeToString(whole)], { type: "image/svg+xml" });

export const csvFile = (text: string): Blob => new Blob([text], { type: "text/csv;charset=utf-8" });

/** Hands a file to the reader. */
export function download(file: Blob, name: string): void {
  const link = Object.assign(document.createElement("a"), { href: URL.createObjectURL(file), download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** Words in lines of so many characters at most. */
export function wrapped(text: string, most: number): string[] {
  const lines = [""];
  for (const word of text.split(" ")) {
    const line = lines.at(-1)!;
    if (line && line.length + 1 + word.length > most) lines.push(word);
    else lines[lines.length - 1] = line ? `${line} ${word}` : word;
  }
  return lines;
}

function element(beside: Element, name: string, attributes: Record<string, string | number>, words = ""): SVGElement {
  const made = beside.ownerDocument.createElementNS(SVG, name) as SVGElement;
  set(made, attributes);
  made.textContent = words;
  return made;
}

function set(element: Element, attributes: Record<string, string | number>): void {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
}
