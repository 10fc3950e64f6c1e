import type { PropertyValues } from "lit";
import {
  DrawProblem,
  draw,
  type Given,
  mark,
  type Question,
  type Reply,
  type Settings,
  type Verdict,
} from "../../cells/exercises/index.ts";
import { printed } from "../../cells/printed.ts";
import { LightElement } from "../light-element.ts";
import type { BuiltExercise } from "./built.ts";
import { choiceReply } from "./choice-reply.ts";
import { comparisonSvg } from "./comparison.ts";
import { fillHtml } from "./fill-html.ts";
import { headWords } from "./head.ts";
import { numberReply } from "./number-reply.ts";
import { orderReply } from "./order-reply.ts";
import { bindOwnWords, type OwnWords, ownWordsHtml } from "./own-words.ts";
import type { ReplyControl } from "./reply.ts";
import { verdictHtml, workingHtml } from "./verdict.ts";

/** What the bubbling events `answered` and `said` carry; `said` is null until the reader says what went wrong. */
export interface Answered {
  /** The exercise's id. */
  readonly exercise: string;
  readonly seed: string;
  readonly given: Given;
  readonly reply: Reply;
  readonly verdict: Verdict;
  /** Hints opened before the reply. */
  readonly help: number;
  /** Which reply to these numbers it is, counted from 1; an unreadable one takes no number. */
  readonly nth: number;
  readonly said: OwnWords | null;
}

/**
 * An exercise that marks itself: draws its numbers from a seed, marks a reply, shows the working, takes note of hints.
 * Fires `answered` after each marking, and `said` where a reader says what went wrong.
 */
export class ExerciseCellElement extends LightElement {
  static override properties = { built: { attribute: false }, settings: { attribute: false } };
  declare built: BuiltExercise | undefined;
  /** Whose numbers fill the exercise; as it was read where there are none. */
  declare settings: Settings | undefined;
  /** A seed for each question after the first. */
  nextSeed: () => string = () =>
    [...crypto.getRandomValues(new Uint32Array(2))].map((word) => word.toString(36)).join("");

  #question: Question | undefined;
  #reply: ReplyControl | undefined;
  #marked: string | undefined;
  #nth = 0;
  #hints = 0;

  protected override firstUpdated(changed: PropertyValues): void {
    super.firstUpdated(changed);
    const form = this.partNamed<HTMLFormElement>("form");
    this.#reply = this.#replyControl(form);
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#mark();
    });
    form.addEventListener("input", () => this.#offerMark());
    this.partNamed("tools").addEventListener("click", (event) => this.#act(event.target as Element));
    for (const [at, fold] of this.#hintFolds.entries()) fold.addEventListener("toggle", () => this.#count(fold, at));
  }

  /** The built question stands as it is, with whatever was typed before the script came, unless others' numbers fill it. */
  protected override updated(changed: PropertyValues): void {
    if (!this.built) return;
    if (this.settings || changed.get("settings")) {
      if (!this.#pose("first")) this.#askAsRead();
    } else if (changed.has("built")) this.#question = draw(this.built.exercise, "first");
  }

  #replyControl(form: HTMLFormElement): ReplyControl {
    if (form.querySelector('[data-part="reply"]')) return numberReply(form);
    if (form.querySelector("fieldset")) return choiceReply(form);
    return orderReply(
      form,
      () => this.#offerMark(),
      (words) => {
        this.partNamed("status").textContent = words;
      },
    );
  }

  /** Asks with the numbers of a seed; false where no draw makes a question of it. */
  #pose(seed: string): boolean {
    if (!this.built) return false;
    try {
      this.#question = draw(this.built.exercise, seed, this.settings);
    } catch (error) {
      if (!(error instanceof DrawProblem)) throw error;
      this.partNamed("status").textContent = "No fresh numbers were found; these stay.";
      return false;
    }
    this.#nth = 0;
    this.#hints = 0;
    this.#fillAsk(this.#question, this.built);
    this.#clear();
    return true;
  }

  /** Where the reader's own numbers make no question, the exercise asks as it was read, and says so. */
  #askAsRead(): void {
    this.#question = draw(this.built!.exercise, "first");
    this.#fillAsk(this.#question, this.built!);
    this.#clear();
    this.partNamed("head").textContent = "with the Dunlin’s numbers: yours make no question of it";
  }

  #fillAsk(question: Question, { html }: BuiltExercise): void {
    this.partNamed("ask").innerHTML = fillHtml(html.ask, question.printed);
    for (const [at, hint] of this.querySelectorAll<HTMLElement>('[data-part="hint"]').entries()) {
      hint.innerHTML = fillHtml(html.hints[at] ?? "", question.printed);
    }
    for (const fold of this.#hintFolds) fold.open = false;
  }

  /** The question stands; reply and verdict go. */
  #clear(): void {
    if (!this.#question || !this.built) return;
    this.#reply?.ask(this.#question, this.built);
    this.#marked = undefined;
    for (const name of ["verdict", "working", "own", "drawing", "status"]) this.partNamed(name).replaceChildren();
    this.partNamed("drawing").hidden = true;
    this.partNamed("tools").hidden = true;
    this.#offerMark();
    this.#writeHead();
  }

  #mark(): void {
    const reply = this.#reply?.read();
    if (!this.#question || !this.built || reply === undefined || String(reply) === this.#marked) return;
    const verdict = mark(this.#question, reply);
    const counted = verdict.kind !== "unreadable";
    if (counted) this.#nth++;
    this.#marked = counted ? String(reply) : undefined;
    this.#show(verdict, this.#question, this.built);
    const { seed, given, exercise } = this.#question;
    const answered: Answered = {
      ...{ exercise: exercise.id, seed, given, reply, verdict },
      ...{ help: this.#hints, nth: this.#nth, said: null },
    };
    if (verdict.kind === "slip") this.#offerWords(answered);
    this.#fire("answered", answered);
  }

  #show(verdict: Verdict, question: Question, built: BuiltExercise): void {
    this.partNamed("verdict").innerHTML = verdictHtml(verdict, question, built);
    this.partNamed("working").innerHTML = workingHtml(verdict, question, built);
    this.partNamed("own").replaceChildren();
    const drawing = drawingOf(verdict, question);
    this.partNamed("drawing").innerHTML = drawing;
    this.partNamed("drawing").hidden = drawing === "";
    if (verdict.kind !== "unreadable") {
      this.#reply?.note(question);
      this.partNamed("tools").hidden = false;
    }
    this.#offerMark();
    this.#writeHead();
  }

  /** The button keeps its place and so its focus; once marked, it waits for another reply. */
  #offerMark(): void {
    const button = this.partNamed("mark");
    const marked = this.#marked !== undefined;
    button.textContent = marked ? "Mark again" : "Mark";
    button.className = marked ? "said" : "main";
    button.setAttribute("aria-disabled", String(marked && String(this.#reply?.read()) === this.#marked));
  }

  #offerWords(answered: Answered): void {
    const own = this.partNamed("own");
    own.innerHTML = ownWordsHtml(answered.exercise);
    bindOwnWords(this.partNamed<HTMLFormElement>("own-form"), (said) => {
      this.partNamed("status").textContent = "Noted.";
      this.#fire("said", { ...answered, said });
    });
  }

  #act(target: Element): void {
    const act = target.closest<HTMLElement>("[data-do]")?.dataset["do"];
    if (act === "fresh" && this.#pose(this.nextSeed())) this.#reply?.focus();
    if (act === "again") {
      this.#clear();
      this.#reply?.focus();
    }
  }

  /** A hint opened after the verdict helps the next reply, not the one that is marked. */
  #count(fold: HTMLDetailsElement, at: number): void {
    if (!fold.open) return;
    this.#hints = Math.max(this.#hints, at + 1);
    if (this.#marked === undefined) this.#writeHead();
  }

  get #hintFolds(): HTMLDetailsElement[] {
    return [...this.querySelectorAll<HTMLDetailsElement>('[data-part="hints"] details')];
  }

  #writeHead(): void {
    this.partNamed("head").textContent = headWords(this.#nth, this.#hints);
  }

  #fire(name: "answered" | "said", detail: Answered): void {
    this.dispatchEvent(new CustomEvent<Answered>(name, { bubbles: true, detail }));
  }
}

function drawingOf(verdict: Verdict, question: Question): string {
  if (question.kind !== "number" || question.exercise.circle || verdict.reply === undefined) return "";
  return comparisonSvg(question.answer, verdict.reply, (value) => printed(value, question.exercise));
}
