import { atlasRules } from "../cells/atlas-rules.ts";
import type { Facts } from "../cells/known.ts";
import type { Worksheet } from "../cells/worksheet.ts";
import { answerOf, rangeWords } from "../widgets/error-atlas/answer.ts";
import type { AtlasRule, Values } from "../widgets/error-atlas/rule.ts";
import { ruleNamed } from "../widgets/error-atlas/rules.ts";
import type { FigureCellElement } from "../widgets/index.ts";
import { say } from "../widgets/said.ts";
import { whenSeen } from "../widgets/when-seen.ts";

/** One rule of the atlas: its sentence follows the worksheet, its figure comes to life when it is first opened. */
export class AtlasEntry {
  readonly key: string;
  readonly fold: HTMLDetailsElement;
  readonly #rule: AtlasRule;
  readonly #needs: readonly string[];
  /** The sentence speaks of the whole axis: it doesn't change with the place along it. */
  readonly #judgedBy: readonly string[];
  readonly #sentence: HTMLElement;
  readonly #range: HTMLElement;
  readonly #figure: FigureCellElement;
  #worksheet: Worksheet | undefined;
  #aircraft: Facts | undefined;

  constructor(section: HTMLElement) {
    this.key = section.id;
    this.#rule = ruleNamed(section.id)!;
    this.#needs = atlasRules[this.#rule.key].needs;
    this.#judgedBy = this.#needs.slice(1);
    this.#sentence = section.querySelector('[data-part="sentence"]')!;
    this.#range = section.querySelector('[data-part="judged"]')!;
    this.fold = section.querySelector("details")!;
    this.#figure = section.querySelector("figure-cell")!;
    this.fold.addEventListener("toggle", () => this.fold.open && this.#enliven());
  }

  /** Takes the reader's numbers and the aircraft they are judged over; both may change later. */
  async take(worksheet: Worksheet, aircraft: Facts, builtIn: boolean): Promise<void> {
    this.#worksheet = worksheet;
    this.#aircraft = aircraft;
    if (!builtIn) delete this.#figure.dataset["owner"];
    say(this.#range, rangeWords(this.#rule, aircraft));
    this.#tell();
    worksheet.subscribe((names) => this.#judgedBy.some((need) => names.has(need)) && this.#follow());
    if (this.fold.open) await this.#enliven();
  }

  #follow(): void {
    whenSeen.update(this.#sentence, () => this.#tell());
  }

  #tell(): void {
    const values = Object.fromEntries(this.#needs.map((need) => [need, this.#worksheet!.value(need)])) as Values;
    say(this.#sentence, answerOf(this.#rule, values, this.#aircraft!));
  }

  async #enliven(): Promise<void> {
    this.#figure.facts = this.#aircraft;
    this.#figure.worksheet = this.#worksheet;
    await this.#figure.updateComplete;
  }
}
