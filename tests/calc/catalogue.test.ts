import { describe, expect, test } from "vitest";
import * as calc from "../../src/calc/index.ts";
import { type Argument, catalogue, type Formula, OutOfRange, topics, UnitMismatch } from "../../src/calc/index.ts";

type Value = number | string;

/** Every public name of the mechanics' contract; chapters may call each one. */
const contract = `
  convert shortestTurn
  isaTemperature isaPressure isaDensity isaAltitude pressureAltitude pressureAltitudeByRule densityAltitude
  feetPerHectopascal
  trueAirspeed calibratedAirspeed machNumber equivalentAirspeed trueAirspeedByRule
  turnRate turnRadius bankForRate bankForRadius bankByTenthPlusSevenRule bankByFifteenPercentRule turnTime loadFactor
  stallSpeedInTurn
  rollOutLead rollOutLeadByRule turnLeadDistance turnLeadDistanceRolling levelOffLead levelOffLeadByRule
  feetPerMile verticalSpeedForAngle angleForVerticalSpeed verticalSpeedByRule descentDistance descentDistanceByRule
  verticalSpeedFromPitch heightError lookInterval heightInUncompensatedBank
  settingError settingErrorByRule coldTemperatureError coldTemperatureErrorByRule lagError
  magneticDip compassInTurn compassAccelerating rollOutHeadingByRule trueHeading compassHeading timedTurn
  windTriangle trackMadeGood windComponents maximumDrift maximumDriftByRule turnInWind
  holdEntry holdOutbound holdOutboundByRule
  trackError trackErrorByOneInSixty slantRange groundDistance minutesToStation minutesToStationByRule interceptLead
  arcLead pathHeight courseHalfWidth
  feltRate feltRateInTurn timeUntilUnfelt
`
  .trim()
  .split(/\s+/);

test.each(contract)("catalogue knows %s, which calc exports", (name) => {
  expect(catalogue.map((formula) => formula.name)).toContain(name);
  expect(calc).toHaveProperty(name, expect.any(Function));
});

test("catalogue names each formula once, in the order of its topics", () => {
  const names = catalogue.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  const order = catalogue.map(({ topic }) => topics.indexOf(topic));
  expect(order).toEqual(order.toSorted((a, b) => a - b));
});

test("catalogue says of every rule which formula it stands for, and of nothing else", () => {
  const broken = catalogue.filter(({ kind, standsFor }) => {
    const exact = catalogue.find(({ name }) => name === standsFor);
    return kind === "rule" ? exact === undefined || exact.kind === "rule" : standsFor !== undefined;
  });
  expect(broken.map(({ name }) => name)).toEqual([]);
});

describe.each(catalogue.map((formula) => [formula.name, formula] as const))("%s", (_, formula) => {
  const example = formula.args.map(({ example }) => example);

  test("gives a finite result for its examples, or null where it may", () => {
    expectResult(formula, call(formula, example));
  });

  test("never gives −0 for its examples or for zeros of either sign", () => {
    for (const [i, { from, to }] of formula.args.entries()) {
      if (from === undefined || to === undefined || from > 0 || to < 0) continue;
      for (const zero of [0, -0]) {
        const result = attempt(formula, example.with(i, zero));
        if (!(result instanceof Error)) expectNoNegativeZero(result);
      }
    }
  });

  test("takes its defaults for what is left out", () => {
    const given = formula.args.filter((argument) => argument.default === undefined).length;
    const filled = formula.args.map((argument) => argument.default ?? argument.example);
    expect(attempt(formula, filled.slice(0, given))).toEqual(attempt(formula, filled));
  });

  const numeric = [...formula.args.entries()].filter(([, { unit }]) => unit !== "word");
  for (const [i, argument] of numeric) {
    const refused = (value: number) => refusal(formula, example.with(i, value));

    test(`refuses NaN for its ${argument.name}`, () => {
      const { words, unit } = argument;
      expect(refused(Number.NaN)).toMatchObject({ quantity: words, unit, value: Number.NaN });
    });

    test(`refuses whatever lies just outside its limits for ${argument.name}, infinities included`, () => {
      const { from = -Infinity, to = Infinity } = argument;
      for (const value of [...outside(from, -1), ...outside(to, 1)]) {
        const problem = refused(value);
        expect(problem).toMatchObject({ unit: argument.unit, value });
        expect({ from: problem.limits.from, to: problem.limits.to }).toEqual({ from, to });
        expect(problem.message).toContain(problem.quantity);
      }
    });

    test(`takes the ends of its limits for ${argument.name} unless they are open`, () => {
      for (const end of ["from", "to"] as const) {
        const problem = attempt(formula, example.with(i, argument[end]!));
        const named = problem instanceof OutOfRange && problem.quantity === refused(Number.NaN).quantity;
        if (!named || problem.limits.from !== argument.from || problem.limits.to !== argument.to) continue;
        expect(problem.limits[end === "from" ? "openFrom" : "openTo"]).toBe(true);
      }
    });
  }

  const words = [...formula.args.entries()].filter(([, { unit }]) => unit === "word");
  for (const [i, { name, options = [] }] of words) {
    test(`takes each word for its ${name} and refuses any other, naming the choices`, () => {
      for (const option of options) {
        const result = attempt(formula, example.with(i, option));
        if (!(result instanceof UnitMismatch)) expectResult(formula, result);
      }
      const problem = refusal(formula, example.with(i, "otherwise"));
      expect(problem.value).toBeNaN();
      for (const option of options) expect(problem.quantity).toContain(option);
    });
  }
});

function call({ call }: Formula, values: readonly Value[]): unknown {
  return (call as unknown as (...values: readonly Value[]) => unknown)(...values);
}

function attempt(formula: Formula, values: readonly Value[]): unknown {
  try {
    return call(formula, values);
  } catch (problem) {
    return problem;
  }
}

function refusal(formula: Formula, values: readonly Value[]): OutOfRange {
  const problem = attempt(formula, values);
  if (problem instanceof OutOfRange) return problem;
  throw new Error(`${formula.name}(${values.join(", ")}) was not refused: ${String(problem)}`);
}

/** Values beyond one end of an argument's limits: a hair, and infinitely far; none beyond an infinite end. */
function outside(end: Argument["to"] & number, direction: 1 | -1): number[] {
  if (!Number.isFinite(end)) return [];
  return [end + direction * Math.max(1e-9, Math.abs(end) * 1e-9), direction * Infinity];
}

function expectResult({ result }: Formula, given: unknown): void {
  if (given === null) expect(result.nullable).toBe(true);
  else if ("fields" in result) {
    expect(Object.keys(given as object).toSorted()).toEqual(Object.keys(result.fields).toSorted());
    for (const [name, { circle }] of Object.entries(result.fields)) {
      expectNumber((given as Record<string, unknown>)[name], circle);
    }
  } else if (result.unit === "word") expect(result.options).toContain(given);
  else expectNumber(given, result.circle);
  expectNoNegativeZero(given);
}

function expectNumber(given: unknown, circle = false): void {
  expect(given).toSatisfy(Number.isFinite);
  if (circle) expect(given).toSatisfy((angle: number) => angle >= 0 && angle < 360);
}

function expectNoNegativeZero(given: unknown): void {
  const values = typeof given === "object" && given !== null ? Object.values(given) : [given];
  for (const value of values) expect(value).not.toBe(-0);
}
