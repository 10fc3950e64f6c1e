import { levelOffLead } from "../leads.ts";
import { EXTRA_LOAD, FRACTION, LEAD, levelOffLoad, levelOffMiss, levelOffTime } from "../level-off.ts";
import { REACTION, VERTICAL_SPEED } from "../ranges.ts";
import { argument } from "./argument.ts";
import type { Formula } from "./formula.ts";
import { plain } from "./printed.ts";
import { figures, size } from "./signs.ts";

const verticalSpeed = argument(VERTICAL_SPEED, { name: "verticalSpeed", symbol: "w", example: 500 });
const fraction = argument(FRACTION, { name: "fraction", symbol: "k", default: 0.1, example: 0.1 });
const steady = "The vertical speed falls to nothing at a steady deceleration.";

export const levelOff: readonly Formula[] = [
  {
    name: "levelOffTime",
    topic: "leads",
    words: "time of a level-off begun at a fraction of the vertical speed",
    symbol: "t",
    args: [fraction],
    result: { unit: "s" },
    digits: 0,
    tex: "2 \\times 60\\,k",
    call: levelOffTime,
    steps: (part: number) => [
      { what: "Time", symbol: "t", tex: "2 \\times 60\\,k", numbers: `2 × 60 × ${plain(part)}` },
    ],
    kind: "exact",
    assumes: `${steady} So it takes as long from any vertical speed.`,
    source: "vertical motion at constant acceleration",
  },
  {
    name: "levelOffLoad",
    topic: "leads",
    words: "extra load of a level-off begun at a fraction of the vertical speed",
    symbol: "\\Delta n",
    args: [verticalSpeed, fraction],
    result: { unit: "g" },
    digits: 3,
    tex: "\\frac{|w|}{120\\,k\\,g}",
    call: levelOffLoad,
    steps: (feetPerMinute: number, part: number) => {
      const w = figures((Math.abs(feetPerMinute) * 0.3048) / 60, 5);
      return [
        { what: "Vertical speed", symbol: "w", numbers: `${size(feetPerMinute)} × 0.00508`, comes: `${w} m/s` },
        {
          what: "Extra load",
          symbol: "\\Delta n",
          tex: "\\frac{|w|}{120\\,k\\,g}",
          numbers: `${w} / (120 × ${plain(part)} × 9.80665)`,
        },
      ];
    },
    kind: "exact",
    assumes: `${steady} It grows with the vertical speed.`,
    source: "vertical motion at constant acceleration",
  },
  {
    name: "levelOffMiss",
    topic: "leads",
    words: "altitude missed by a level-off",
    symbol: "\\Delta h",
    args: [
      verticalSpeed,
      argument(EXTRA_LOAD, { name: "extraLoad", symbol: "\\Delta n", example: 0.05 }),
      argument(LEAD, { name: "lead", symbol: "l", example: 50 }),
      argument(REACTION, { name: "reaction", symbol: "t_r", default: 0, example: 1 }),
    ],
    result: { unit: "ft" },
    digits: 0,
    tex: "\\pm\\left(\\frac{w^2}{2\\,\\Delta n\\,g} + |w|\\,t_r - l\\right)",
    call: levelOffMiss,
    steps: (feetPerMinute: number, load: number, lead: number, reaction: number) => {
      const needed = figures(levelOffLead(feetPerMinute, load, reaction), 6);
      return [
        {
          what: "Lead needed",
          symbol: "l_0",
          tex: "\\frac{w^2}{2\\,\\Delta n\\,g} + |w|\\,t_r",
          numbers: `(${size(feetPerMinute)} / 60)² / (2 × ${plain(load)} × 32.174) + ${size(feetPerMinute)} / 60 × ${plain(reaction)}`,
          comes: `${needed} ft`,
        },
        {
          what: "Missed",
          symbol: "\\Delta h",
          tex: "\\pm\\left(l_0 - l\\right)",
          numbers: feetPerMinute < 0 ? `${plain(lead)} − ${needed}` : `${needed} − ${plain(lead)}`,
        },
      ];
    },
    kind: "model",
    assumes: `${steady} Above the altitude wanted is positive; plus in a climb, minus in a descent.`,
    source: "vertical motion at constant acceleration",
  },
];
