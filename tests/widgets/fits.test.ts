import { expect, test } from "vitest";
import { fitExtraLoad, fitLag } from "../../src/calc/index.ts";
import { fittings, outcomeOf } from "../../src/widgets/fit-panel/fits.ts";

const [roll, load, lag] = fittings as [(typeof fittings)[0], (typeof fittings)[0], (typeof fittings)[0]];

test("outcomeOf leaves empty rows out and gives the constant with its interval", () => {
  const rows = [
    ["15", "3"],
    ["", ""],
    ["30", "6"],
    [" ", ""],
  ];
  expect(outcomeOf(roll, rows)).toEqual({
    words: "5.0\u00a0°/s; between 5.0 and 5.0\u00a0°/s with 95 per cent confidence, from 2 readings",
    entry: "5",
  });
});

test("outcomeOf takes the height of a level-off from the altitudes at which it began and ended, up or down", () => {
  const up = [
    ["500", "1,978", "2,000"],
    ["1000", "1920", "2000"],
  ];
  const down = [
    ["-500", "2022", "2000"],
    ["−1000", "2080", "2000"],
  ];
  const { value } = fitExtraLoad([
    { verticalSpeed: 500, height: 22 },
    { verticalSpeed: 1000, height: 80 },
  ]);
  for (const rows of [up, down])
    expect(outcomeOf(load, rows)).toMatchObject({ entry: String(Number(value.toFixed(3))) });
});

test("outcomeOf turns the signs of a descent's needle round", () => {
  const noted = [
    { time: 2, shown: 240 },
    { time: 4, shown: 360 },
  ];
  const entry = String(Number(fitLag(500, noted).value.toFixed(1)));
  expect(
    outcomeOf(
      lag,
      [
        ["2", "240"],
        ["4", "360"],
      ],
      "500",
    ),
  ).toMatchObject({ entry });
  expect(
    outcomeOf(
      lag,
      [
        ["2", "-240"],
        ["4", "-360"],
      ],
      "-500",
    ),
  ).toMatchObject({ entry });
});

test.each([
  [roll, [["15", "3"]], "", "Two readings at least; six show how far they scatter."],
  [
    roll,
    [
      ["15", "3"],
      ["30", ""],
    ],
    "",
    "Reading 2: time is no number.",
  ],
  [
    roll,
    [
      ["15", "3"],
      ["95", "6"],
    ],
    "",
    "Bank must be over 0 deg and under 90 deg, not 95.",
  ],
  [
    load,
    [
      ["500", "2000", "2000"],
      ["500", "1980", "2000"],
    ],
    "",
    "Height must be over 0 ft and at most 20000 ft, not 0.",
  ],
  [
    lag,
    [
      ["2", "240"],
      ["4", "360"],
    ],
    "",
    "Steady vertical speed is wanted.",
  ],
])("outcomeOf says of %o with %j what is wanting", (fitting, rows, shared, wants) => {
  expect(outcomeOf(fitting, rows, shared)).toEqual({ wants });
});
