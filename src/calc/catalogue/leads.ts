import {
  COURSE_CHANGE,
  EXTRA_LOAD,
  FRACTION,
  LEAD_RADIUS,
  levelOffLead,
  levelOffLeadByRule,
  rollOutLead,
  rollOutLeadByRule,
  turnLeadDistance,
} from "../leads.ts";
import { BANK, REACTION, ROLL_RATE, TRUE_AIRSPEED, VERTICAL_SPEED } from "../ranges.ts";
import { ROLLING_BANK, turnLeadDistanceRolling } from "../rolling-lead.ts";
import { cos, degrees, G, metresPerSecond, radians } from "../si.ts";
import { TURN_SPEED } from "../turn-path.ts";
import { turnRate } from "../turns.ts";
import { argument } from "./argument.ts";
import type { Formula, Step } from "./formula.ts";
import { plain, significant } from "./printed.ts";
import { perSecond, rateStep, speed, speedStep } from "./rows.ts";

const bank = argument(BANK, { name: "bank", symbol: "\\varphi", example: 15 });
const courseChange = argument(COURSE_CHANGE, { name: "courseChange", symbol: "\\Delta\\psi", example: 90 });
const rollRate = argument(ROLL_RATE, { name: "rollRate", symbol: "p", example: 5 });
const reaction = argument(REACTION, { name: "reaction", symbol: "t_r", default: 0, example: 0 });
const verticalSpeed = argument(VERTICAL_SPEED, { name: "verticalSpeed", symbol: "w", example: -500 });
const size = (value: number) => plain(Math.abs(value));

export const leads: readonly Formula[] = [
  {
    name: "rollOutLead",
    topic: "leads",
    words: "lead for the roll-out",
    symbol: "\\psi",
    args: [argument(TRUE_AIRSPEED, { name: "tas", symbol: "V", example: 95 }), bank, rollRate, reaction],
    result: { unit: "deg" },
    digits: 1,
    tex: "\\frac{g}{V p}\\ln\\frac{1}{\\cos\\varphi} + \\frac{g\\tan|\\varphi|}{V}\\,t_r",
    call: rollOutLead,
    steps: rollOutSteps,
    kind: "exact",
    assumes: "Level and coordinated all through; the bank comes off at a steady roll rate after the reaction.",
    source: "the rate of turn g tan φ / V, integrated while the bank comes off",
  },
  {
    name: "rollOutLeadByRule",
    topic: "leads",
    words: "lead for the roll-out by rule of thumb",
    symbol: "\\psi",
    args: [bank, argument(FRACTION, { name: "fraction", symbol: "k", default: 0.5, example: 0.5 })],
    result: { unit: "deg" },
    digits: 1,
    tex: "k\\,|\\varphi|",
    call: rollOutLeadByRule,
    steps: (degrees: number, fraction: number) => [
      { what: "Lead", symbol: "\\psi", tex: "k\\,|\\varphi|", numbers: `${plain(fraction)} × ${size(degrees)}` },
    ],
    kind: "rule",
    standsFor: "rollOutLead",
    assumes: "A half fits a roll rate about that of the turn, 3°/s at rate one; a third fits 4.5°/s. Schools differ.",
    source: "FAA-H-8083-15B: half the bank",
  },
  {
    name: "turnLeadDistance",
    topic: "leads",
    words: "lead for a turn onto a course",
    symbol: "d",
    args: [argument(LEAD_RADIUS, { name: "radius", symbol: "R", example: 0.5 }), courseChange],
    result: { unit: "NM" },
    digits: 2,
    tex: "R\\tan\\frac{|\\Delta\\psi|}{2}",
    call: turnLeadDistance,
    steps: (radius: number, change: number) => [
      {
        what: "Lead",
        symbol: "d",
        tex: "R\\tan\\frac{|\\Delta\\psi|}{2}",
        numbers: `${plain(radius)} × tan (${size(change)}° / 2)`,
      },
    ],
    kind: "exact",
    assumes: "A circle in still air that touches both courses; the bank is there and gone at once.",
    source: "tangents to a circle",
  },
  {
    name: "turnLeadDistanceRolling",
    topic: "leads",
    words: "lead for a turn onto a course, with rolling",
    symbol: "d",
    args: [
      argument(TURN_SPEED, { name: "tas", symbol: "V", example: 95 }),
      argument(ROLLING_BANK, { name: "bank", symbol: "\\varphi", example: 15 }),
      courseChange,
      rollRate,
      reaction,
    ],
    result: { unit: "NM" },
    digits: 2,
    tex: "V t_r + \\int V\\cos\\psi\\,\\mathrm{d}t - \\frac{1}{\\tan|\\Delta\\psi|}\\int V\\sin\\psi\\,\\mathrm{d}t",
    call: turnLeadDistanceRolling,
    kind: "exact",
    assumes:
      "Level and coordinated in still air; bank goes on and comes off at the roll rate p. A change too small to reach the bank takes less of it.",
    source: "the path integrated through reaction, roll-in, steady turn and roll-out",
  },
  {
    name: "levelOffLead",
    topic: "leads",
    words: "lead for the level-off",
    symbol: "\\Delta h",
    args: [verticalSpeed, argument(EXTRA_LOAD, { name: "extraLoad", symbol: "\\Delta n", example: 0.05 }), reaction],
    result: { unit: "ft" },
    digits: 0,
    tex: "\\frac{w^2}{2\\,|\\Delta n|\\,g} + |w|\\,t_r",
    call: levelOffLead,
    steps: levelOffSteps,
    kind: "model",
    assumes: "A steady extra load from the vertical speed to level, after the reaction. Climb and descent alike.",
    source: "vertical motion at constant acceleration",
  },
  {
    name: "levelOffLeadByRule",
    topic: "leads",
    words: "lead for the level-off by rule of thumb",
    symbol: "\\Delta h",
    args: [verticalSpeed, argument(FRACTION, { name: "fraction", symbol: "k", default: 0.1, example: 0.1 })],
    result: { unit: "ft" },
    digits: 0,
    tex: "k\\,|w|",
    call: levelOffLeadByRule,
    steps: (feetPerMinute: number, fraction: number) => [
      { what: "Lead", symbol: "\\Delta h", tex: "k\\,|w|", numbers: `${plain(fraction)} × ${size(feetPerMinute)}` },
    ],
    kind: "rule",
    standsFor: "levelOffLead",
    assumes:
      "Feet from feet per minute. A tenth makes every level-off last 12 s, so the load grows with vertical speed.",
    source: "FAA-H-8083-15B: a tenth of the vertical speed",
  },
];

function rollOutSteps(tas: number, bank: number, rollRate: number, reaction: number): Step[] {
  const p = significant(radians(rollRate), 4);
  const rolling = significant(degrees((-G / (metresPerSecond(tas) * radians(rollRate))) * Math.log(cos(bank))), 4);
  const rate = turnRate(tas, Math.abs(bank));
  return [
    speedStep(tas),
    { what: "Roll rate", symbol: "p", numbers: `${plain(rollRate)} × 0.0174533`, comes: `${p} rad/s` },
    {
      what: "Turned while rolling out",
      symbol: "\\psi_1",
      tex: "\\frac{g}{V p}\\ln\\frac{1}{\\cos\\varphi}",
      numbers: `9.80665 / (${speed(tas)} × ${p}) × ln (1 / cos ${size(bank)}°) × 57.296`,
      comes: `${rolling}°`,
    },
    rateStep(tas, Math.abs(bank)),
    {
      what: "Lead",
      symbol: "\\psi",
      tex: "\\psi_1 + \\omega\\,t_r",
      numbers: `${rolling} + ${perSecond(rate)} × ${plain(reaction)}`,
    },
  ];
}

function levelOffSteps(verticalSpeed: number, extraLoad: number, reaction: number): Step[] {
  const w = significant((Math.abs(verticalSpeed) * 0.3048) / 60, 4);
  const a = significant(Math.abs(extraLoad) * G, 4);
  const lead = significant(levelOffLead(verticalSpeed, extraLoad, reaction) * 0.3048, 4);
  return [
    { what: "Vertical speed", symbol: "w", numbers: `${size(verticalSpeed)} × 0.00508`, comes: `${w} m/s` },
    {
      what: "Acceleration",
      symbol: "a",
      tex: "|\\Delta n|\\,g",
      numbers: `${size(extraLoad)} × 9.80665`,
      comes: `${a} m/s²`,
    },
    {
      what: "Lead",
      symbol: "\\Delta h",
      tex: "\\frac{w^2}{2a} + w\\,t_r",
      numbers: `${w}² / (2 × ${a}) + ${w} × ${plain(reaction)} = ${lead} m`,
    },
  ];
}
