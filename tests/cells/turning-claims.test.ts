import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  bankByFifteenPercentRule,
  bankByTenthPlusSevenRule,
  bankForRate,
  isaTemperature,
  loadFactor,
  stallSpeedInTurn,
  trueAirspeed,
  turnRadius,
  turnRate,
} from "../../src/calc/index.ts";

// Every number that the chapter 'Turning by numbers' prints and that isn't a live value, computed.

const chapter = readFileSync(new URL("../../chapters/turning.md", import.meta.url), "utf8");
const body = chapter.slice(chapter.indexOf("\n---\n") + 5);

/** A number as the chapter words it, and what it is; it must be that to half its last digit. */
interface Claim {
  readonly says: string;
  readonly numbers: readonly { readonly printed: number; readonly digits: number; readonly is: number }[];
}

const number = (printed: number, digits: number, is: number) => ({ printed, digits, is });
const tenthError = (tas: number) => bankByTenthPlusSevenRule(tas) - bankForRate(tas);
const fifteenError = (tas: number) => bankByFifteenPercentRule(tas) - bankForRate(tas);
const upright = (bank: number) => 1 / loadFactor(bank);
const speeds = (from: number, to: number) => Array.from({ length: (to - from) * 4 + 1 }, (_, i) => from + i / 4);
/** Where a function crosses zero between two speeds at which its signs differ. */
function crossing(f: (x: number) => number, low: number, high: number): number {
  if (high - low < 1e-9) return low;
  const mid = (low + high) / 2;
  return f(low) * f(mid) <= 0 ? crossing(f, low, mid) : crossing(f, mid, high);
}
const at8000 = trueAirspeed(92, 8000, isaTemperature(8000));
const at2400 = trueAirspeed(92, 2400, isaTemperature(2400));

const claims: Claim[] = [
  { says: "At 30° the shortfall is 13 per cent of the weight", numbers: [number(13, 0, 100 - 100 * upright(30))] },
  {
    says: "loses 13 per cent of the lift, but the lift must grow by 15 per cent",
    numbers: [number(13, 0, 100 - 100 * upright(30)), number(15, 0, 100 * loadFactor(30) - 100)],
  },
  {
    says: "25° and 3°/s meet at 169.8 kt TAS",
    numbers: [
      number(
        169.8,
        1,
        crossing((tas) => bankForRate(tas, 3) - 25, 100, 250),
      ),
    ],
  },
  {
    says: "climbs at first by 0.157° a knot",
    numbers: [number(0.157, 3, bankForRate(0.001, 3) / 0.001)],
  },
  { says: "crosses it near 143 kt", numbers: [number(143, 0, crossing(fifteenError, 100, 200))] },
  { says: "3° too much at 250 kt", numbers: [number(3, 0, fifteenError(250))] },
  {
    says: "4.7° too much at 40 kt, crosses near 140 kt, and is 2.5° too little at 250 kt",
    numbers: [number(4.7, 1, tenthError(40)), number(2.5, 1, -tenthError(250))],
  },
  {
    says: "Near 95 kt each degree of bank is worth about 0.2°/s, nearly 13° of heading over that minute",
    numbers: [
      number(0.2, 1, turnRate(95, 15.1) - turnRate(95, 14.1)),
      number(13, 0, 60 * (turnRate(95, 15.1) - turnRate(95, 14.1))),
    ],
  },
  {
    says: "The 14.6° that gives 3°/s at 95 kt gives 3.8°/s at 75 kt",
    numbers: [number(14.6, 1, bankForRate(95, 3)), number(3.8, 1, turnRate(75, bankForRate(95, 3)))],
  },
  {
    says: "At 45° it is 1.41 g, 41 per cent more lift than the weight; at 60° it is 2 g",
    numbers: [number(1.41, 2, loadFactor(45)), number(41, 0, 100 * loadFactor(45) - 100), number(2, 0, loadFactor(60))],
  },
  {
    says: "the 15° from 45° to 60° ask for 59.",
    numbers: [number(59, 0, 100 * (loadFactor(60) - loadFactor(45)))],
  },
  { says: "a tenth less weight lowers it by about 5 per cent", numbers: [number(5, 0, 100 - 100 * Math.sqrt(0.9))] },
  {
    says: "14.6° of bank at 95 kt and 22.4° at 150 kt, both 3°/s",
    numbers: [number(14.6, 1, bankForRate(95, 3)), number(22.4, 1, bankForRate(150, 3))],
  },
  {
    says: "If the mark stands a tenth wrong, a one-minute half turn ends 18° wrong",
    numbers: [number(18, 0, 60 * 1.1 * 3 - 180)],
  },
  {
    says: "answers near 66 kt are the whole factor, answers near 56 kt have the root",
    numbers: [number(66, 0, 47 * loadFactor(45)), number(56, 0, stallSpeedInTurn(47, 45))],
  },
  { says: "Multiply by 57.3 for degrees", numbers: [number(57.3, 1, 180 / Math.PI)] },
  {
    says: "A knot is 0.5144 m/s, and g is 9.807 m/s²",
    numbers: [number(0.5144, 4, 1852 / 3600), number(9.807, 3, 9.80665)],
  },
  {
    says: "Three degrees a second is 0.05236 radians a second",
    numbers: [number(0.05236, 5, (3 * Math.PI) / 180)],
  },
];

test.each(claims)("calc bears out: $says", ({ says, numbers }) => {
  expect(body).toContain(says);
  for (const { printed, digits, is } of numbers) {
    // A hair beyond half the last digit, for sums that end on it exactly in decimal and not in binary.
    expect(Math.abs(is - printed)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);
  }
});

const worded = (says: string, holds: () => boolean) => ({ says, holds });
const inWords = [
  worded("the part of the drag that comes from making lift grows by a third", () => {
    // At one speed this drag goes with the square of the lift.
    return Math.abs(loadFactor(30) ** 2 - 4 / 3) < 1e-9;
  }),
  worded("a circle of four times the radius", () => Math.abs(turnRadius(190, 15) / turnRadius(95, 15) - 4) < 1e-9),
  worded("a circle about a fifth wider at 8,000 ft than at 2,400 ft", () => {
    const wider = turnRadius(at8000, 15) / turnRadius(at2400, 15) - 1;
    return wider > 0.175 && wider < 0.225;
  }),
  worded("below about 170 kt TAS that is 3°/s", () => bankForRate(169, 3) < 25 && bankForRate(171, 3) > 25),
  worded("a little less steep", () => bankForRate(0.001, 3) / 0.001 > 0.15 && bankForRate(0.001, 3) / 0.001 < 0.16),
  worded("within 0.4° of the curve from 40 to 160 kt", () =>
    speeds(40, 160).every((tas) => Math.abs(fifteenError(tas)) < 0.4),
  ),
  worded("The second stays within 0.4° from 40 to 160 kt, then runs away", () => {
    const growing = speeds(160, 250).map(fifteenError);
    return fifteenError(170) > 0.4 && growing.every((error, i) => i === 0 || error > growing[i - 1]!);
  }),
  worded("starts 7° too high", () => Math.abs(tenthError(0.001) - 7) < 1e-3),
  worded("crosses near 140 kt", () => Math.abs(crossing(tenthError, 100, 200) - 140) < 1.5),
  worded(
    "The first rule is right at one speed, near 140 kt, and generous below it",
    () => speeds(40, 138).every((tas) => tenthError(tas) > 0) && speeds(140, 250).every((tas) => tenthError(tas) < 0),
  ),
  worded("At this speed that rule banks too much", () => speeds(70, 115).every((tas) => tenthError(tas) > 0.9)),
  worded("nearly 2° too much at 95 kt", () => tenthError(95) > 1.8 && tenthError(95) < 2),
  worded("The first 15° of bank ask for less than 4 per cent", () => loadFactor(15) < 1.04),
  worded("keeps students on the flat part of that curve", () => loadFactor(30) - 1 < (loadFactor(60) - 1) / 6),
  worded("Forget the root at 45° and you get the answer for 60°", () => {
    return Math.abs(47 * loadFactor(45) - stallSpeedInTurn(47, 60)) < 1e-9;
  }),
  worded("Beyond 45° of bank more of the added lift goes sideways than up", () =>
    // The sideways share of a force along the lift is sin φ, the upright share cos φ.
    [46, 60, 80].every((bank) => Math.sqrt(1 - upright(bank) ** 2) > upright(bank)),
  ),
  worded("at 95 kt, 30° instead of 15° more than halves the circle", () => turnRadius(95, 30) < turnRadius(95, 15) / 2),
  worded("30° of bank saves about as much reach ahead as ten seconds of earlier decision at 95 kt", () => {
    const saved = turnRadius(95, 15) - turnRadius(95, 30);
    return Math.abs(saved - (95 * 10) / 3600) < 0.005;
  }),
  worded("falls steeply over the first 15° of bank, and little beyond 30°", () => {
    const fallen = (from: number, to: number) => turnRadius(95, from) - turnRadius(95, to);
    return fallen(5, 15) > 9 * fallen(30, 45);
  }),
  worded("on the dial you have 92 kt at 8,000 ft", () => {
    const change = bankForRate(at8000, 3) - bankForRate(at2400, 3);
    return change > 1 && change < 1.5;
  }),
  worded("from one to two and a half degrees of bank", () => {
    // The corners of the exercise's draw.
    const worth = [
      [75, 5000],
      [75, 10000],
      [110, 5000],
      [110, 10000],
    ].map(
      ([cas = 0, height = 0]) =>
        bankForRate(trueAirspeed(cas, height, isaTemperature(height)), 3) - bankForRate(cas, 3),
    );
    return Math.round(Math.min(...worth)) === 1 && Math.abs(Math.max(...worth) - 2.5) < 0.25;
  }),
  worded("so the slip is nearly fourfold", () => (3600 / 1852) ** 2 > 3.7 && (3600 / 1852) ** 2 < 4),
];

test.each(inWords)("calc bears out in words: $says", ({ says, holds }) => {
  expect(body).toContain(says);
  expect(holds()).toBe(true);
});

test("no number of the chapter's own prose goes unproved", () => {
  const proved = [...claims, ...inWords].map(({ says }) => says);
  // What needs no proof: definitions, the school's limit, heights of an example, cross-references, documents and dates.
  const stated = [
    /FAA-H-8083-\w+, 20\d\d/g,
    /Doc 8168, Volume I, fifth edition, 2006/g,
    /\(?section \d\)?/g,
    /step \d/g,
    /figure \d/g,
    /^\d\. /gm,
    /TRN-\d/g,
    /\*\*\d+ minutes\.\*\*/g,
    /asks for 3°\/s or 25° of bank/g,
    /at 2,400 ft and \{dialHigh\} at 8,000 ft/g,
    /30° at Saltmarsh/g,
    /at 30°, \{stall30\}; at 45°, \{stall45\}; at 60°, \{stall60\}/g,
    /At 30° and the same speed|at 30° and the same speed/g,
    /at 30° the upright part/g,
    /by how much does the bank for rate one change from what you use at 2,400 ft/g,
    /is enough for 3°\/s/g,
    /Ask for the stall at 45°|stall at 8,000 ft/g,
  ];
  let rest = ownProse(body);
  for (const says of proved) rest = rest.replaceAll(says, "");
  for (const pattern of stated) rest = rest.replaceAll(pattern, "");
  const left = rest.split("\n").filter((line) => /\d/.test(line.replaceAll(/\{\w+\}/g, "")));
  expect(left).toEqual([]);
});

/** Prose, callouts, side notes, captions, reveals and instructor's notes; not maths, live values, exercises or workings. */
function ownProse(text: string): string {
  const fenced = [...text.matchAll(/^```(\w+)\n([\s\S]*?)^```$/gm)];
  const kept = fenced.map(([, kind, inside = ""]) => {
    if (kind === "notes" || kind === "brief") return inside;
    return inside.match(/^(?:see|say): .*$/gm)?.join("\n") ?? "";
  });
  return [text.replaceAll(/^```\w+\n[\s\S]*?^```$/gm, ""), ...kept]
    .join("\n")
    .replaceAll(/^\$\$\n[\s\S]*?^\$\$$/gm, "")
    .replaceAll(/\$[^$\n]+\$/g, "")
    .replaceAll(/\[\^\d\]:?/g, "");
}
