import { turnRadius, turnRate } from "../../calc/turns.ts";
import type { Figure, FigureState, FigureTable, Readout, Shown } from "../figure.ts";
import { asSet, nearest, readout, rounded } from "../figure-words.ts";
import { turnPanels } from "./drawing.ts";
import { isStalled, type Turn, type TurnModel, tableBanks, turnModel } from "./model.ts";

/** Rate above, radius below, against bank. */
export const turnRateRadius: Figure & { readonly name: "turn-rate-radius" } = {
  name: "turn-rate-radius",
  needs: ["tas", "bank"],
  holds: { tas: [20, 400], bank: [0, 85] },
  model: ({ owner }) =>
    `Model: level, balanced turn in still air, from wings level to 85° of bank. Leaves out wind, the roll in and out, and changes of height or speed. Stalling and never-exceed speeds are indicated and are compared with the true airspeed as it stands; the higher you are, the less the needle shows for it. Limits: ${owner}.`,
  show: shown,
};

function shown({ values, kept, aircraft }: FigureState): Shown {
  const model = turnModel(turnOf(values), kept && turnOf(kept), aircraft);
  return {
    readouts: readouts(model),
    notice: notice(model),
    kept: model.kept ? turnWords(model.kept) : "",
    description: description(model),
    table: () => table(model),
    panels: (size) => turnPanels(model, size),
  };
}

const turnOf = (values: Readonly<Record<string, number>>): Turn => ({ tas: values["tas"]!, bank: values["bank"]! });

const turnWords = ({ tas, bank }: Turn): string => `${asSet(tas, "kt")}, ${asSet(bank, "deg")}`;

function readouts({ now, kept }: TurnModel): Readout[] {
  return [
    readout("Rate of turn", { value: now.rate, kept: kept?.rate, unit: "deg/s", digits: 2 }),
    readout("Radius", { value: now.radius, kept: kept?.radius, unit: "NM", digits: 2 }),
    readout("Bank for rate one", {
      value: now.bankForRateOne,
      kept: kept?.bankForRateOne,
      unit: "deg",
      digits: 1,
    }),
  ];
}

function notice({ now, limits, beyond }: TurnModel): string {
  const [speed, stall] = [asSet(now.tas, "kt"), asSet(limits.stall ?? 0, "kt")];
  const said: string[] = [];
  if (beyond?.why === "too fast")
    said.push(`${speed} is above the never-exceed speed of ${asSet(limits.neverExceed!, "kt")} (${limits.name}).`);
  if (beyond?.why === "stalled")
    said.push(`${speed} is not above the stalling speed, ${stall} wings level (${limits.name}).`);
  else if (isStalled(now, limits))
    said.push(
      `From ${rounded(beyond!.from, "deg", 0)} of bank ${speed} is below the stalling speed in the turn, ${stall} wings level (${limits.name}).`,
    );
  if (now.bank > limits.bank)
    said.push(`${asSet(now.bank, "deg")} is beyond the school’s bank limit of ${asSet(limits.bank, "deg")}.`);
  return said.join(" ");
}

function description({ now, kept }: TurnModel): string {
  const turn = (one: Turn & { rate: number; radius: number }): string =>
    one.bank === 0
      ? `${asSet(one.tas, "kt")}, wings level: no turn`
      : `${turnWords(one)}: ${rounded(one.rate, "deg/s", 2)}, radius ${rounded(one.radius, "NM", 2)}`;
  const beside = kept ? ` Kept: ${turn(kept)}.` : "";
  return `Rate of turn grows with bank and radius shrinks. At ${turn(now)}. Rate one is met at ${rounded(now.bankForRateOne, "deg", 1)} of bank.${beside}`;
}

function table({ now, kept }: TurnModel): FigureTable {
  const pair = (tas: number, also: string) => [
    { name: `Rate at ${asSet(tas, "kt")}${also}`, unit: "deg/s", digits: 2 },
    { name: `Radius at ${asSet(tas, "kt")}${also}`, unit: "NM", digits: 2 },
  ];
  const speeds = kept ? [now.tas, kept.tas] : [now.tas];
  return {
    caption: "Rate and radius of a level turn against bank",
    columns: [
      { name: "Bank", unit: "deg", digits: 0 },
      ...pair(now.tas, ""),
      ...(kept ? pair(kept.tas, ", kept") : []),
    ],
    rows: tableBanks.map((bank) => [bank, ...speeds.flatMap((tas) => [turnRate(tas, bank), turnRadius(tas, bank)])]),
    here: nearest(tableBanks, now.bank),
    ...(kept ? { was: nearest(tableBanks, kept.bank) } : {}),
  };
}
