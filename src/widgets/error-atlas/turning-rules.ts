import {
  bankByFifteenPercentRule,
  bankByTenthPlusSevenRule,
  bankForRate,
  rollOutHeadingByRule,
  rollOutLead,
  rollOutLeadByRule,
  rollOutReading,
  shortestTurn,
} from "../../calc/index.ts";
import { asSet } from "../figure-words.ts";
import { overBanks, overTrueAirspeeds } from "./ranges.ts";
import type { AtlasRule, Values } from "./rule.ts";

const RATE_ONE = 3;

const bankForRateOne = {
  result: { name: "Bank for 3 °/s", unit: "deg", digits: 1 },
  exact: ({ tas }: Values) => bankForRate(tas!, RATE_ONE),
  across: overTrueAirspeeds,
  at: undefined,
  over: "too much bank",
  under: "too little bank",
  safe: "under",
  why: "The turn only takes longer, while more bank than it needs raises the stalling speed.",
  leavesOut:
    "Level, balanced turn in still air at 3 °/s. The rules take true airspeed in knots; fed with an indicated one they give less bank the higher you are.",
  holds: { tas: [10, 400] },
} as const;

/** Compass turns are taught at a bank for which the lead is about half of it. */
const leadOf = (bank: number): number => rollOutLeadByRule(bank, 0.5);

/** Rules of bank, of rolling out and of the compass. */
export const turningRules: readonly AtlasRule[] = [
  {
    key: "bankByTenthPlusSevenRule",
    name: "bankByTenthPlusSevenRule",
    lines: [
      {
        words: ["TAS/10 + 7", "/10 + 7"],
        subject: "the rule",
        value: ({ tas }) => bankByTenthPlusSevenRule(tas!),
      },
    ],
    ...bankForRateOne,
  },
  {
    key: "bankByFifteenPercentRule",
    name: "bankByFifteenPercentRule",
    lines: [
      { words: ["15 % of TAS", "15 %"], subject: "the rule", value: ({ tas }) => bankByFifteenPercentRule(tas!) },
    ],
    ...bankForRateOne,
  },
  {
    key: "rollOutLeadByRule",
    name: "rollOutLeadByRule",
    result: { name: "Heading still to go", unit: "deg", digits: 1 },
    exact: ({ tas, bank, rollRate }) => rollOutLead(tas!, bank!, rollRate!),
    lines: [
      { words: ["a half", "a half"], subject: "half of the bank", value: ({ bank }) => leadOf(bank!) },
      {
        words: ["a third", "a third"],
        subject: "a third of the bank",
        value: ({ bank }) => rollOutLeadByRule(bank!, 1 / 3),
      },
    ],
    across: overBanks,
    at: ({ tas, rollRate }) => `at ${asSet(tas!, "kt")}, rolling out at ${asSet(rollRate!, "deg/s")}`,
    over: "out early",
    under: "out late",
    safe: "over",
    why: "Wings level short of the heading, you turn on by what is missing; past it, you bank again to come back.",
    leavesOut:
      "The bank comes off at a steady rate, at one speed, without any time to react. Schools differ on the fraction; both are shown.",
    holds: { bank: [0, 80], tas: [20, 400], rollRate: [0.5, 60] },
  },
  {
    key: "rollOutHeadingByRule",
    name: "rollOutHeadingByRule",
    result: { name: "Reading still to go", unit: "deg", digits: 0 },
    exact: ({ heading, bank, dip }) =>
      shortestTurn(rollOutReading(heading!, "right", dip!, bank!, leadOf(bank!)), heading!),
    lines: [
      {
        words: ["latitude", "rule"],
        subject: "the rule",
        value: ({ heading, bank, latitude }) =>
          shortestTurn(rollOutHeadingByRule(heading!, "right", latitude!, leadOf(bank!)), heading!),
      },
    ],
    across: { range: () => [0, 360], whose: () => "every heading", whole: true },
    at: ({ bank, latitude, dip }) =>
      `at ${asSet(bank!, "deg")} of bank, latitude ${asSet(latitude!, "deg")}, dip ${asSet(dip!, "deg")}`,
    over: "out early",
    under: "out late",
    safe: "over",
    why: "On a steady heading the card settles, and you turn on by what is missing.",
    leavesOut:
      "Model: a static tilted card, settled; a real card swirls and lags, so no curve here is what yours will read. Turning right with a lead of half the bank; to the left all is mirrored, so read 360° less the heading. Differences are in the reading, not in the heading flown.",
    caution:
      "Avoid first: this is for a failed heading indicator. Timed turns need no such rule, and your school’s way of flying by the compass goes before it.",
    holds: { heading: [0, 360], bank: [0, 45], latitude: [-85, 85], dip: [-85, 85] },
  },
];
