import type { Figure, FigureState, FigureTable, Readout, Shown } from "../figure.ts";
import { asSet, nearest, readout, rounded, signed } from "../figure-words.ts";
import { rulesPanels } from "./drawing.ts";
import { type Ruled, type RulesModel, ruledAt, rulesModel, tableSpeeds } from "./model.ts";

/** The bank for rate one against true airspeed, exact and by two rules; the rules' errors beneath. */
export const rateOneRules: Figure & { readonly name: "rate-one-rules" } = {
  name: "rate-one-rules",
  needs: ["tas"],
  holds: { tas: [10, 400] },
  model: ({ owner }) =>
    `Model: level, balanced turn at 3 °/s in still air. Leaves out wind, turbulence and the turn indicator’s own error. The rules take true airspeed in knots; stalling and never-exceed speeds are indicated and are compared with it as it stands. Limits: ${owner}.`,
  show: shown,
};

function shown({ values, kept, aircraft }: FigureState): Shown {
  const model = rulesModel(values["tas"]!, kept?.["tas"], aircraft);
  return {
    readouts: readouts(model),
    notice: notice(model),
    kept: model.kept ? asSet(model.kept.tas, "kt") : "",
    description: description(model),
    table: () => table(model),
    panels: (size) => rulesPanels(model, size),
  };
}

function readouts({ now, kept }: RulesModel): Readout[] {
  const bank = (value: number, was: number | undefined) => ({ value, kept: was, unit: "deg", digits: 1 });
  const aside = (error: number) => ({ aside: `error ${signed(error, "deg", 1)}` });
  return [
    readout("Exact", bank(now.exact, kept?.exact), { line: "one" }),
    readout("TAS/10 + 7", bank(now.tenth, kept?.tenth), { line: "two", ...aside(now.tenthError) }),
    readout("15 % of TAS", bank(now.fifteen, kept?.fifteen), { line: "three", ...aside(now.fifteenError) }),
  ];
}

function notice({ now: { tas }, limits: { name, stall, neverExceed } }: RulesModel): string {
  if (neverExceed !== undefined && tas > neverExceed)
    return `${asSet(tas, "kt")} is above the never-exceed speed of ${asSet(neverExceed, "kt")} (${name}).`;
  if (stall !== undefined && tas <= stall)
    return `${asSet(tas, "kt")} is not above the stalling speed, ${asSet(stall, "kt")} wings level (${name}).`;
  return "";
}

function description({ now, kept }: RulesModel): string {
  const at = ({ tas, exact, tenth, tenthError, fifteen, fifteenError }: Ruled): string =>
    `at ${asSet(tas, "kt")} the bank for rate one is ${degrees(exact)}; a tenth and seven gives ${degrees(tenth)}, error ${signed(tenthError, "deg", 1)}; 15 % gives ${degrees(fifteen)}, error ${signed(fifteenError, "deg", 1)}`;
  const beside = kept ? ` Kept: ${at(kept)}.` : "";
  return `Bank for a rate-one turn against true airspeed, and the error of each rule beneath: ${at(now)}.${beside}`;
}

const degrees = (value: number): string => rounded(value, "deg", 1);

function table({ now, kept }: RulesModel): FigureTable {
  const bank = { unit: "deg", digits: 1 };
  return {
    caption: "Bank for a rate-one turn, exact and by rule",
    columns: [
      { name: "True airspeed", unit: "kt", digits: 0 },
      { name: "Exact", ...bank },
      { name: "TAS/10 + 7", ...bank },
      { name: "Error of TAS/10 + 7", ...bank, signed: true },
      { name: "15 % of TAS", ...bank },
      { name: "Error of 15 % of TAS", ...bank, signed: true },
    ],
    rows: tableSpeeds
      .map(ruledAt)
      .map((at) => [at.tas, at.exact, at.tenth, at.tenthError, at.fifteen, at.fifteenError]),
    here: nearest(tableSpeeds, now.tas),
    ...(kept ? { was: nearest(tableSpeeds, kept.tas) } : {}),
  };
}
