import { LightElement } from "../light-element.ts";
import { type Fitting, fittings, outcomeOf, ROWS } from "./fits.ts";

/** A constant that readings gave, on its way into the form. */
export interface Fitted {
  /** The form's field. */
  readonly id: string;
  readonly entry: string;
}

/** The panel of readings: what they come to shows as they are typed; `fitted` bubbles when a reader takes it. */
export class FitPanelElement extends LightElement {
  protected override firstUpdated(): void {
    for (const fitting of fittings) this.#bind(fitting, this.querySelector(`[data-fitting="${fitting.key}"]`)!);
  }

  #bind(fitting: Fitting, box: HTMLElement): void {
    let entry = "";
    const words = box.querySelector('[data-part="fitted"]')!;
    const buttons = [...box.querySelectorAll<HTMLButtonElement>("[data-into]")];
    const follow = (): void => {
      const rows = Array.from({ length: ROWS }, (_, row) =>
        [...box.querySelectorAll<HTMLInputElement>(`[data-row="${row}"]`)].map(({ value }) => value),
      );
      const outcome = outcomeOf(fitting, rows, box.querySelector<HTMLInputElement>('[data-part="shared"]')?.value);
      entry = "entry" in outcome ? outcome.entry : "";
      words.textContent = "words" in outcome ? outcome.words : outcome.wants;
      for (const button of buttons) button.disabled = entry === "";
    };
    box.addEventListener("change", follow);
    for (const button of buttons)
      button.addEventListener("click", () => {
        const detail: Fitted = { id: button.dataset["into"]!, entry };
        this.dispatchEvent(new CustomEvent<Fitted>("fitted", { bubbles: true, detail }));
        words.textContent = `${entry} stands in the form now; save it there.`;
      });
  }
}
