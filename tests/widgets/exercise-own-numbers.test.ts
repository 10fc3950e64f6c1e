import "./dom.ts"; // before Lit
import { expect, test } from "vitest";
import { draw, type Exercise, type Settings } from "../../src/cells/exercises/index.ts";
import { ExerciseCellElement } from "../../src/widgets/exercise-cell/element.ts";
import { bodyOf } from "./dom.ts";
import { builtOf, radius, shellOf } from "./exercise-of.ts";

customElements.define("exercise-cell", ExerciseCellElement);

const knots = { label: "stall", unit: "kt", digits: 0, circle: false };
const part = { label: "lead", unit: "plain", digits: 1, circle: false };
const stall: Exercise = {
  ...radius,
  id: "stall-1",
  ask: "The aeroplane stalls at {aircraft.stall}, and the lead is {technique.leadFraction} of {bank}.",
  hints: [],
  answer: "stallSpeedInTurn(aircraft.stall, bank) + technique.leadFraction * bank",
  unit: "kt",
  within: { value: 1, unit: "kt" },
  slips: [],
  facts: {
    "aircraft.stall": { value: 47, unit: "kt" },
    "technique.leadFraction": { value: 0.5, unit: "plain" },
  },
  measures: { ...radius.measures, "aircraft.stall": knots, "technique.leadFraction": part },
};

const school = (speed: number, fraction: number): Settings => ({
  aircraft: { title: "Teal", owner: "Teal", facts: { stall: { value: speed, unit: "kt" } } },
  technique: { title: "", owner: "", facts: { leadFraction: { value: fraction, unit: "plain" } } },
});

async function placed(settings: Settings | undefined): Promise<ExerciseCellElement> {
  const element = bodyOf(shellOf(stall)).querySelector("exercise-cell") as ExerciseCellElement;
  element.built = builtOf(stall);
  element.settings = settings;
  await element.updateComplete;
  return element;
}

const asked = (element: ExerciseCellElement) => element.querySelector('[data-part="ask"]')!.textContent;

test("ExerciseCellElement asks with the settings' aircraft and technique, and as read again without them", async () => {
  const element = await placed(school(52, 0.3));
  expect(asked(element)).toMatch(/^The aeroplane stalls at 52\skt, and the lead is 0\.3 of/);
  element.settings = undefined;
  await element.updateComplete;
  expect(asked(element)).toMatch(/^The aeroplane stalls at 47\skt, and the lead is 0\.5 of/);
});

test("ExerciseCellElement asks as read, and says so, where the settings make no question", async () => {
  const element = await placed(school(-5, 0.3));
  expect(asked(element)).toMatch(/^The aeroplane stalls at 47\skt/);
  expect(element.querySelector('[data-part="head"]')!.textContent).toBe(
    "with the Dunlin’s numbers: yours make no question of it",
  );
});

test("draw takes technique.* from the settings as it takes aircraft.*", () => {
  const { given } = draw(stall, "first", school(52, 0.3));
  expect(given["aircraft.stall"]).toBe(52);
  expect(given["technique.leadFraction"]).toBe(0.3);
  expect(draw(stall, "first").given["technique.leadFraction"]).toBe(0.5);
});
