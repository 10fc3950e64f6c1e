/** How far out of view an element still follows at once, px. */
const MARGIN = 150;
/** How long the hand must rest before what is out of view follows too, ms. */
const REST = 250;

/**
 * Updates of elements that stand in view are made at once; others wait until their element comes into view, until
 * the hand rests, or until the page is printed. What is seen is so always true, and what isn't costs a moving slider
 * nothing. Where the browser can't tell what is in view, everything is.
 */
class WhenSeen {
  readonly #observer: IntersectionObserver | undefined;
  readonly #away = new WeakSet<Element>();
  readonly #watched = new WeakSet<Element>();
  readonly #waiting = new Map<Element, () => void>();
  #rest: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    if (typeof IntersectionObserver === "undefined") return;
    this.#observer = new IntersectionObserver((entries) => this.#seen(entries), { rootMargin: `${MARGIN}px 0px` });
    window.addEventListener("beforeprint", () => this.#flush());
  }

  /** Makes an element's update now or as soon as it matters; a newer one takes the place of one that waits. */
  update(element: Element, run: () => void): void {
    if (this.#observer && !this.#watched.has(element)) {
      this.#watched.add(element);
      this.#observer.observe(element);
    }
    if (!this.#away.has(element)) {
      run();
      return;
    }
    this.#waiting.set(element, run);
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#flush(), REST);
  }

  #seen(entries: readonly IntersectionObserverEntry[]): void {
    for (const { target, isIntersecting } of entries) {
      if (!isIntersecting) {
        this.#away.add(target);
        continue;
      }
      this.#away.delete(target);
      this.#waiting.get(target)?.();
      this.#waiting.delete(target);
    }
  }

  #flush(): void {
    clearTimeout(this.#rest);
    for (const run of this.#waiting.values()) run();
    this.#waiting.clear();
  }
}

/** The page's one. */
export const whenSeen = new WhenSeen();
