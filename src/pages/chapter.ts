import { givenWith } from "../cells/school/own-given.ts";
import type { School } from "../cells/school/school.ts";
import { Worksheet } from "../cells/worksheet.ts";
import type { BuiltSheet } from "../widgets/built-sheet.ts";
import { frontispiece } from "../widgets/frontispiece.ts";
import {
  bindLiveValues,
  ExerciseCellElement,
  FigureCellElement,
  PredictCellElement,
  WorkingCellElement,
} from "../widgets/index.ts";
import { restore, write } from "./address.ts";
import { bindPlaceRuler } from "./place-ruler.ts";
import { bindWhose, ownSchool, ownTrouble, shown } from "./school.ts";
import { bindShade } from "./shade.ts";

const sheet: BuiltSheet = JSON.parse(document.getElementById("sheet")!.textContent);
let own: School | undefined;
let worksheet: Worksheet;
let unbind = (): void => {};

define();
bindShade();
bindPlaceRuler();
bindWhose(sheet, () => void follow());
say([...ownTrouble(sheet), ...restore(worksheet!, worksheet!.given, own)]);

document.addEventListener("release", () => write(worksheet, own));
document.addEventListener("predicted", (event) =>
  reveal(event.target as Element, (event as ValuesEvent).detail.values),
);
document.addEventListener("ask-again", (event) =>
  takeBack(event.target as Element, (event as ValuesEvent).detail.values),
);

/** Elements come alive in page order; each takes its worksheet as a property. */
function define(): void {
  customElements.define("figure-cell", FigureCellElement);
  customElements.define("exercise-cell", ExerciseCellElement);
  customElements.define("predict-cell", PredictCellElement);
  customElements.define("working-cell", WorkingCellElement);
}

/** Puts the school's numbers, hers or the built-in, into everything on the page; what the reader has changed stays. */
async function follow(): Promise<void> {
  const changed = worksheet?.changed().map((name) => [name, worksheet.value(name) as number]) ?? [];
  own = ownSchool(sheet);
  const { aircraft, place, technique } = own ?? sheet;
  const given = own ? givenWith(sheet.given, own) : sheet.given;
  const schedule = (run: () => void): void => void requestAnimationFrame(run);
  worksheet = new Worksheet({ given, work: sheet.work }, { aircraft, place, technique, schedule });
  worksheet.setMany(Object.fromEntries(changed));
  unbind();
  unbind = bindLiveValues(document.body, worksheet);
  const cells = [...followFigures(), ...followExercises(), ...followOthers()];
  followFrontispiece();
  await Promise.all(cells.map((cell) => cell.updateComplete));
  shown(own);
}

function followFigures(): FigureCellElement[] {
  const cells = [...document.querySelectorAll<FigureCellElement>("figure-cell")];
  for (const cell of cells) {
    // The built drawing is the Dunlin's: under another's numbers it is no state of the figure's to start from.
    if (own) delete cell.dataset["owner"];
    cell.facts = own?.aircraft ?? sheet.aircraft;
    cell.worksheet = worksheet;
  }
  return cells;
}

/** Exercises that use a number of the school's ask with hers; the others stay as they are, replies and all. */
function followExercises(): ExerciseCellElement[] {
  const built = new Map(sheet.exercises.map((one) => [one.exercise.id, one]));
  const values = Object.fromEntries(worksheet.given.map(({ name, value }) => [name, value]));
  const cells = [...document.querySelectorAll<ExerciseCellElement>("exercise-cell")];
  for (const cell of cells) {
    cell.nextSeed = randomSeed;
    cell.built = built.get(cell.id);
    const { facts = {}, values: givens = {} } = cell.built?.exercise ?? {};
    const uses = Object.keys({ ...facts, ...givens }).length > 0;
    if (uses) cell.settings = own && { aircraft: own.aircraft, place: own.place, technique: own.technique, values };
  }
  return cells;
}

function followOthers(): (PredictCellElement | WorkingCellElement)[] {
  const cells = document.querySelectorAll<PredictCellElement | WorkingCellElement>("predict-cell, working-cell");
  for (const cell of cells) cell.worksheet = worksheet;
  return [...cells];
}

function followFrontispiece(): void {
  const place = document.querySelector(".frontispiece");
  const rollRate = worksheet.value("aircraft.rollRate");
  if (place && own && typeof rollRate === "number") place.innerHTML = frontispiece(worksheet.given, rollRate);
}

type ValuesEvent = CustomEvent<{ values: Readonly<Record<string, number>> }>;

/** After a prediction the next figure keeps what it shows, and the change is made for all to follow. */
function reveal(predict: Element, then: Readonly<Record<string, number>>): void {
  figureAfter(predict)?.keep();
  worksheet.setMany(then);
  write(worksheet, own);
}

function takeBack(predict: Element, before: Readonly<Record<string, number>>): void {
  figureAfter(predict)?.letGo();
  worksheet.setMany(before);
  write(worksheet, own);
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
