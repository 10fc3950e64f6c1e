import type { PropertyValues } from "lit";
import { OutOfRange } from "../calc/limits.ts";
import type { WorkingStep } from "../cells/chapter.ts";
import type { Worksheet } from "../cells/worksheet.ts";
import { LightElement } from "./light-element.ts";
import { troubleText } from "./live-values.ts";
import { whenSeen } from "./when-seen.ts";
import { workingRows } from "./working-cell.ts";
import { fillRow } from "./working-rows.ts";

/** A worked example that follows the worksheet: numbers and results are filled in place. */
export class WorkingCellElement extends LightElement {
  static override properties = { worksheet: { attribute: false } };
  declare worksheet: Worksheet | undefined;
  #unsubscribe: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#subscribe();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#unsubscribe?.();
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has("worksheet")) this.#subscribe();
  }

  #subscribe(): void {
    this.#unsubscribe?.();
    this.#unsubscribe = this.worksheet?.subscribe(() => whenSeen.update(this, () => this.#fill()));
    this.#fill();
  }

  #fill(): void {
    if (!this.worksheet) return;
    const steps = JSON.parse(this.dataset["steps"] ?? "[]") as WorkingStep[];
    for (const [step, rows] of workingRows(steps, (name) => this.worksheet?.use(name)).entries()) {
      const items = this.querySelectorAll<HTMLElement>(`[data-step="${step}"]`);
      for (const [at, item] of items.entries()) {
        if (rows instanceof OutOfRange) fillRow(item, troubleRow(rows, at === items.length - 1, item.dataset["tex"]));
        else fillRow(item, rows[at] ?? { numbers: "", spoken: "", comes: "", idle: true });
      }
    }
  }
}

/** Of a step in trouble only the last row shows, with what it ran into. */
const troubleRow = (trouble: OutOfRange, last: boolean, tex = "") => ({
  tex,
  numbers: "",
  spoken: "",
  comes: last ? troubleText(trouble) : "",
  ...(last ? {} : { idle: true as const }),
});
