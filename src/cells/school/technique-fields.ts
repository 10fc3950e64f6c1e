import { recoveryOrders } from "../../calc/index.ts";
import type { ChoiceField, Field, ListField, NumberField, TextField } from "./field.ts";

const number = (
  key: string,
  label: string,
  [unit, from, to]: readonly [unit: string, from: number, to: number],
  note?: string,
): NumberField => ({
  kind: "number",
  id: `technique.${key}`,
  path: ["technique", "numbers", key],
  section: "leads",
  label,
  unit,
  from,
  to,
  ...(note && { note }),
});

const leads: readonly Field[] = [
  number("leadFraction", "Roll-out lead, part of the bank", ["plain", 0.1, 1], "a half is 0.5, a third 0.33"),
  number("climbLead", "Level-off lead from a climb", ["plain", 0.02, 0.5], "part of the vertical speed"),
  number(
    "descentLead",
    "Level-off lead from a descent at the same speed",
    ["plain", 0.02, 0.5],
    "part of the vertical speed",
  ),
  number("fasterPower", "Descent into higher speed: power", ["ft", 20, 500], "height still to go at the first cue"),
  number(
    "fasterAttitude",
    "Descent into higher speed: attitude",
    ["ft", 10, 300],
    "height still to go at the second cue",
  ),
  number("turnRate", "Rate of turn aimed for", ["deg/s", 1, 6], "rate one is 3"),
  number("turnBank", "Bank in a level turn, at most", ["deg", 5, 45], "the lesser of this and what the rate asks for"),
  number("climbTurnBank", "Bank in a climbing turn", ["deg", 5, 30]),
  number("driftMultiple", "Drift applied outbound in a hold", ["plain", 1, 4], "times the inbound drift"),
  number(
    "holdMargin",
    "Margin at the borders of hold entries",
    ["deg", 0, 15],
    "either side; any of the two entries will do",
  ),
];

const recovery = (key: string, label: string): ChoiceField => ({
  kind: "choice",
  id: `technique.${key}`,
  path: ["technique", "recovery", key],
  section: "recovery",
  label,
  note: "as the flight manual states it",
  choices: Object.fromEntries(recoveryOrders.map((order) => [order, order.replaceAll("-", ", ")])),
});

const phrase = (key: string, label: string): TextField => ({
  kind: "text",
  id: `technique.${key}`,
  path: ["technique", "phrases", key],
  section: "phrases",
  label,
  longest: 80,
});

const order = (key: string, label: string): ListField => ({
  kind: "list",
  id: `technique.orders.${key}`,
  path: ["technique", "orders", key],
  section: "orders",
  label,
});

/** The keys of the orders of work, each with what it is the order of. */
export const orderLabels = {
  before: "Before any manoeuvre",
  levelDuring: "Straight and level",
  climbInto: "Into a climb",
  climbDuring: "During a climb",
  climbOut: "Out of a climb, levelling off",
  descentInto: "Into a descent",
  descentDuring: "During a descent",
  descentOut: "Out of a descent, same speed",
  fasterOut: "Out of a descent, into higher speed",
  turnInto: "Into a level turn",
  turnDuring: "During a turn",
  turnOut: "Out of a turn",
  climbingTurnInto: "Into a climbing turn",
  climbingTurnOut: "Out of a climbing turn",
  descendingTurnInto: "Into a descending turn",
  descendingTurnOut: "Out of a descending turn",
} as const;

/** A manoeuvre's stage, as the orders of work name it. */
export type OrderName = keyof typeof orderLabels;

/** How the school flies and speaks. */
export const techniqueFields: readonly Field[] = [
  ...leads,
  recovery("noseLow", "Recovery, nose low"),
  recovery("noseHigh", "Recovery, nose high"),
  phrase("clearAsk", "Pilot under the hood, before a turn"),
  phrase("clearReply", "Safety pilot, when it is clear"),
  phrase("handOver", "Handing over control"),
  phrase("takeOver", "Taking control"),
  phrase("confirm", "Confirming the change"),
  ...Object.entries(orderLabels).map(([key, label]) => order(key, label)),
  {
    kind: "choice",
    id: "words",
    path: ["words"],
    section: "words",
    label: "Regional words",
    choices: {
      british: "rate one, balance, QNH",
      american: "standard rate, coordination, altimeter setting",
    },
  },
];
