import { Worksheet } from "../cells/worksheet.ts";
import type { BuiltSheet } from "../widgets/built-sheet.ts";
import {
  bindLiveValues,
  ExerciseCellElement,
  FigureCellElement,
  PredictCellElement,
  WorkingCellElement,
} from "../widgets/index.ts";
import { restore, write } from "./address.ts";
import { bindPlaceRuler } from "./place-ruler.ts";
import { bindShade } from "./shade.ts";

const sheet: BuiltSheet = JSON.parse(document.getElementById("sheet")!.textContent);
const worksheet = new Worksheet(sheet, {
  aircraft: sheet.aircraft,
  place: sheet.place,
  schedule: (run) => requestAnimationFrame(run),
});

bindShade();
bindPlaceRuler();
bindLiveValues(document.body, worksheet);
register();
say(restore(worksheet, sheet.given));

document.addEventListener("release", () => write(worksheet));
document.addEventListener("predicted", (event) =>
  reveal(event.target as Element, (event as ValuesEvent).detail.values),
);
document.addEventListener("ask-again", (event) =>
  takeBack(event.target as Element, (event as ValuesEvent).detail.values),
);

/** Elements come alive in page order; each takes its worksheet as a property. */
function register(): void {
  customElements.define("figure-cell", FigureCellElement);
  customElements.define("exercise-cell", ExerciseCellElement);
  customElements.define("predict-cell", PredictCellElement);
  customElements.define("working-cell", WorkingCellElement);
  const built = new Map(sheet.exercises.map((one) => [one.exercise.id, one]));
  for (const cell of document.querySelectorAll<FigureCellElement>("figure-cell")) {
    cell.facts = sheet.aircraft;
    cell.worksheet = worksheet;
  }
  for (const cell of document.querySelectorAll<ExerciseCellElement>("exercise-cell")) {
    cell.nextSeed = randomSeed;
    cell.built = built.get(cell.id);
  }
  for (const cell of document.querySelectorAll<PredictCellElement | WorkingCellElement>("predict-cell, working-cell")) {
    cell.worksheet = worksheet;
  }
}

type ValuesEvent = CustomEvent<{ values: Readonly<Record<string, number>> }>;

/** After a prediction the next figure keeps what it shows, and the change is made for all to follow. */
function reveal(predict: Element, then: Readonly<Record<string, number>>): void {
  figureAfter(predict)?.keep();
  worksheet.setMany(then);
  write(worksheet);
}

function takeBack(predict: Element, before: Readonly<Record<string, number>>): void {
  figureAfter(predict)?.letGo();
  worksheet.setMany(before);
  write(worksheet);
}

function figureAfter(cell: Element): FigureCellElement | undefined {
  const figures = [...document.querySelectorAll<FigureCellElement>("figure-cell")];
  return figures.find((figure) => cell.compareDocumentPosition(figure) & Node.DOCUMENT_POSITION_FOLLOWING);
}

function say(notices: readonly string[]): void {
  const place = document.querySelector('[data-part="notices"]');
  place?.replaceChildren(
    ...notices.map((words) => Object.assign(document.createElement("p"), { className: "notice", textContent: words })),
  );
}

function randomSeed(): string {
  return [...crypto.getRandomValues(new Uint32Array(2))].map((word) => word.toString(36)).join("");
}
