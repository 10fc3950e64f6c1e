/**
 * Tells when an element comes within so many pixels of the view, and when it leaves. Where the browser can't say, it
 * is always near.
 */
export function whileNear(element: Element, pixels: number, left: AbortSignal, tell: (near: boolean) => void): void {
  if (typeof IntersectionObserver === "undefined") {
    tell(true);
    return;
  }
  const observer = new IntersectionObserver((entries) => tell(entries.at(-1)!.isIntersecting), {
    rootMargin: `${pixels}px 0px`,
  });
  observer.observe(element);
  left.addEventListener("abort", () => observer.disconnect());
}
