/** An element's text as a screen reader would say it: typeset maths, which stands there twice, counts once. */
export function readAloud(element: Element): string {
  const copy = element.cloneNode(true) as Element;
  for (const seen of copy.querySelectorAll('[aria-hidden="true"], annotation, button')) seen.remove();
  return (copy.textContent ?? "").replace(/\s+/g, " ").trim();
}
