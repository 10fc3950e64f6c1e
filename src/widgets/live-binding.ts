import type { Given, Work } from "../cells/chapter.ts";
import type { Worksheet } from "../cells/worksheet.ts";
import { Hands, KINDS } from "./live-hand.ts";
import { liveText, placeOf, troubleText, troubleTitle, valueWords } from "./live-values.ts";
import { whenSeen } from "./when-seen.ts";

/**
 * Makes every live value under `root` follow the worksheet, and every given among them change it.
 * One set of listeners serves the page. A `release` event bubbles from a given when the hand lets go.
 *
 * @returns a function that takes the listeners away
 */
export function bindLiveValues(root: HTMLElement, worksheet: Worksheet): () => void {
  const spans = spansByName(root);
  const measures = new Map<string, Given | Work>([...worksheet.given, ...worksheet.work].map((one) => [one.name, one]));
  const write = (names: Iterable<string>): void => {
    for (const name of names) {
      const measure = measures.get(name);
      if (!measure) continue;
      for (const span of spans.get(name) ?? []) whenSeen.update(span, () => follow(span, measure, worksheet));
    }
  };
  write(spans.keys());
  const hands = new Hands(worksheet, measures);
  for (const kind of KINDS) root.addEventListener(kind, hands);
  const unsubscribe = worksheet.subscribe(write);
  return () => {
    for (const kind of KINDS) root.removeEventListener(kind, hands);
    unsubscribe();
  };
}

function spansByName(root: HTMLElement): Map<string, HTMLElement[]> {
  const spans = new Map<string, HTMLElement[]>();
  for (const span of root.querySelectorAll<HTMLElement>(".given[data-given], .live[data-is]")) {
    const name = span.dataset["given"] ?? span.dataset["is"]!;
    spans.set(name, [...(spans.get(name) ?? []), span]);
  }
  return spans;
}

function follow(span: HTMLElement, measure: Given | Work, worksheet: Worksheet): void {
  const value = worksheet.value(measure.name);
  const trouble = worksheet.trouble(measure.name);
  const text = trouble ? troubleText(trouble) : liveText(value, measure, span.dataset["given"] !== undefined);
  if (span.textContent !== text) span.textContent = text;
  span.classList.toggle("trouble", trouble !== undefined);
  if (trouble) span.title = troubleTitle(trouble);
  else if (span.title) span.removeAttribute("title");
  const wide = span.dataset["wide"] ?? "";
  if (!trouble && text.length > wide.length) span.dataset["wide"] = text;
  if (span.dataset["given"] !== undefined && typeof value === "number") followRange(span, value, measure, worksheet);
}

function followRange(span: HTMLElement, value: number, measure: Given | Work, worksheet: Worksheet): void {
  const { from, to } = worksheet.range(measure.name);
  span.style.setProperty("--at", `${placeOf(value, { from, to })}`);
  if (span.getAttribute("aria-valuemin") !== `${from}`) span.setAttribute("aria-valuemin", `${from}`);
  if (span.getAttribute("aria-valuemax") !== `${to}`) span.setAttribute("aria-valuemax", `${to}`);
  span.setAttribute("aria-valuenow", `${value}`);
  span.setAttribute("aria-valuetext", valueWords(value, measure));
}
