/**
 * Shows a figure alone on the screen: full screen where the browser can, else over the whole window.
 *
 * @param changed called when it has grown or shrunk
 */
export class FigureScreen {
  readonly #figure: HTMLElement;
  readonly #button: HTMLButtonElement;
  readonly #changed: () => void;

  constructor(figure: HTMLElement, button: HTMLButtonElement, changed: () => void, left: AbortSignal) {
    this.#figure = figure;
    this.#button = button;
    this.#changed = changed;
    button.addEventListener("click", () => this.#toggle(), { signal: left });
    const { ownerDocument: document } = figure;
    document.addEventListener("fullscreenchange", () => this.#followBrowser(), { signal: left });
    document.addEventListener("keydown", ({ key }) => key === "Escape" && this.#isFull && this.#leave(), {
      signal: left,
    });
  }

  get #isFull(): boolean {
    return this.#figure.hasAttribute("data-full");
  }

  #toggle(): void {
    if (this.#isFull) this.#leave();
    else {
      this.#show(true);
      // Where it is missing or refused, the figure still fills the window.
      this.#figure.requestFullscreen?.().catch(() => {});
    }
  }

  #leave(): void {
    const { ownerDocument: document } = this.#figure;
    if (document.fullscreenElement === this.#figure) void document.exitFullscreen();
    this.#show(false);
  }

  #followBrowser(): void {
    if (this.#isFull && !this.#figure.ownerDocument.fullscreenElement) this.#show(false);
  }

  #show(full: boolean): void {
    this.#figure.toggleAttribute("data-full", full);
    this.#figure.ownerDocument.documentElement.toggleAttribute("data-figure-full", full);
    this.#button.setAttribute("aria-pressed", String(full));
    this.#button.focus();
    this.#changed();
  }
}
