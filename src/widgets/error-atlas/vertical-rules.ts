import {
  descentDistance,
  descentDistanceByRule,
  levelOffLead,
  levelOffLeadByRule,
  verticalSpeedByRule,
  verticalSpeedForAngle,
} from "../../calc/index.ts";
import { asSet } from "../figure-words.ts";
import { overHeights, overTrueAirspeeds, overVerticalSpeeds } from "./ranges.ts";
import type { AtlasRule } from "./rule.ts";

/** Rules of climb and descent. */
export const verticalRules: readonly AtlasRule[] = [
  {
    key: "levelOffLeadByRule",
    name: "levelOffLeadByRule",
    result: { name: "Height before the level", unit: "ft", digits: 0 },
    exact: ({ verticalSpeed, extraLoad, reaction }) => levelOffLead(verticalSpeed!, extraLoad!, reaction),
    lines: [
      {
        words: ["a tenth", "a tenth"],
        subject: "the rule",
        value: ({ verticalSpeed }) => levelOffLeadByRule(verticalSpeed!),
      },
    ],
    across: overVerticalSpeeds,
    at: ({ extraLoad, reaction }) =>
      `with ${asSet(extraLoad!, "g")} of extra load and ${reaction === 0 ? "no time" : asSet(reaction!, "s")} to react`,
    over: "begun early",
    under: "begun late",
    safe: "over",
    why: "The level-off is eased in short of the altitude; begun late, it goes through the altitude or asks for more load.",
    leavesOut:
      "Model: a steady extra load from the first pull or push until level, climbing or descending at an unchanged speed. Accelerating into a faster cruise takes more.",
    holds: { verticalSpeed: [-6000, 6000], extraLoad: [0.005, 2], reaction: [0, 30] },
  },
  {
    key: "verticalSpeedByRule",
    name: "verticalSpeedByRule",
    result: { name: "Vertical speed, down", unit: "ft/min", digits: 0 },
    exact: ({ groundSpeed, pathAngle }) => verticalSpeedForAngle(groundSpeed!, pathAngle!),
    lines: [
      {
        words: ["5 × GS", "5 × GS"],
        subject: "the rule",
        value: ({ groundSpeed }) => verticalSpeedByRule(groundSpeed!),
      },
    ],
    across: {
      ...overTrueAirspeeds,
      whose: (aircraft) => `${overTrueAirspeeds.whose(aircraft)}, in still air`,
    },
    at: ({ pathAngle }) => `on a path of ${asSet(pathAngle!, "deg")}`,
    over: "too fast down",
    under: "too slow down",
    safe: "under",
    why: "It leaves you above the path, where the ground is farther and the approach can be given up.",
    leavesOut: "Geometry over the ground; the rule is made for a path of 3°.",
    holds: { groundSpeed: [0, 600], pathAngle: [0.5, 30] },
  },
  {
    key: "descentDistanceByRule",
    name: "descentDistanceByRule",
    result: { name: "Distance to descend", unit: "NM", digits: 1 },
    exact: ({ height, pathAngle }) => descentDistance(height!, pathAngle!),
    lines: [
      {
        words: ["3 a 1,000 ft", "by rule"],
        subject: "the rule",
        value: ({ height }) => descentDistanceByRule(height!),
      },
    ],
    across: overHeights,
    at: ({ pathAngle }) => `on a path of ${asSet(pathAngle!, "deg")}`,
    over: "begun early",
    under: "begun late",
    safe: "over",
    why: "You are level with distance in hand, never below the height you are cleared to; begun late, you arrive high or steep.",
    leavesOut:
      "Geometry over a flat earth; the rule is made for a path of 3°. Nothing is added for slowing down or levelling off.",
    holds: { height: [0, 45_000], pathAngle: [0.5, 30] },
  },
];
