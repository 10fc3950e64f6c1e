import { parseHTML } from "linkedom";

const { window } = parseHTML("<!doctype html><html><body></body></html>");
const names = [
  "document",
  "HTMLElement",
  "customElements",
  "Event",
  "CustomEvent",
  "Node",
  "MutationObserver",
] as const;
// Lit looks for these when it is loaded: import this file before any element.
for (const name of names) Object.assign(globalThis, { [name]: window[name] });
Object.assign(globalThis, { window, requestAnimationFrame: (run: () => void) => setTimeout(run, 0) });
// Selecting text is for eyes; linkedom has none.
Object.assign(window.HTMLInputElement.prototype, { select: () => {} });

/** A page's body with nothing but this HTML in it. */
export function bodyOf(html: string): HTMLElement {
  document.body.innerHTML = html;
  return document.body;
}

export const click = (element: Element | null | undefined): void => {
  if (!element) throw new Error("there is nothing to press");
  element.dispatchEvent(new Event("click", { bubbles: true, cancelable: true }));
};

export const press = (element: Element, key: string): Event => {
  const event = Object.assign(new Event("keydown", { bubbles: true, cancelable: true }), { key });
  element.dispatchEvent(event);
  return event;
};

/** The details of all events of a name that reach the body from now on. */
export function heard<Detail>(name: string): Detail[] {
  const details: Detail[] = [];
  document.body.addEventListener(name, (event) => details.push((event as CustomEvent<Detail>).detail));
  return details;
}
