/** Puts words into an element that holds nothing else; its text node stays, which spares the browser a new one. */
export function say(element: Element, words: string): void {
  const { firstChild } = element;
  if (firstChild?.nodeType === 3 && firstChild === element.lastChild && words !== "") {
    if (firstChild.nodeValue !== words) firstChild.nodeValue = words;
  } else if (element.textContent !== words) element.textContent = words;
}
