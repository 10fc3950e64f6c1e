import { convert, FROM_HEADING, units as known, shortestTurn, TO_HEADING, VALUE } from "../units.ts";
import { argument } from "./argument.ts";
import type { Formula } from "./formula.ts";
import { plain, term } from "./printed.ts";

const unit = (name: string, words: string, example: string) => ({
  name,
  words,
  symbol: `\\mathrm{${name}}`,
  unit: "word",
  options: known,
  example,
});

export const units: readonly Formula[] = [
  {
    name: "convert",
    topic: "units",
    words: "value in another unit",
    symbol: "y",
    args: [
      argument(VALUE, { name: "value", symbol: "x", example: 95 }),
      unit("from", "unit it is in", "kt"),
      unit("to", "unit it shall be in", "m/s"),
    ],
    result: { unit: "plain" },
    digits: 3,
    tex: "\\frac{x u_{\\mathrm{from}} + (z_{\\mathrm{from}} - z_{\\mathrm{to}})}{u_{\\mathrm{to}}}",
    call: convert,
    kind: "exact",
    assumes:
      "Each unit is u of its kind's base unit and reads 0 at z of it. Temperatures are readings, not differences.",
    source: "ICAO Annex 5: 1 NM = 1852 m, 1 ft = 0.3048 m; 1 inHg = 33.8639 hPa",
  },
  {
    name: "shortestTurn",
    topic: "units",
    words: "shorter turn between two headings",
    symbol: "\\Delta\\psi",
    args: [
      argument(FROM_HEADING, { name: "from", symbol: "\\psi_1", example: 350 }),
      argument(TO_HEADING, { name: "to", symbol: "\\psi_2", example: 20 }),
    ],
    result: { unit: "deg" },
    digits: 0,
    tex: "\\psi_2 - \\psi_1 + 360^\\circ k",
    call: shortestTurn,
    steps: (from: number, to: number) => [
      {
        what: "Shorter turn",
        symbol: "\\Delta\\psi",
        tex: "\\psi_2 - \\psi_1 + 360^\\circ k",
        numbers: `${plain(to)} − ${term(plain(from))}${turnsAdded(from, to)}`,
      },
    ],
    kind: "exact",
    assumes: "The whole number k brings the turn over −180° and to 180° at most; right is positive.",
    source: "angles on a circle",
  },
];

function turnsAdded(from: number, to: number): string {
  const degrees = Math.round((shortestTurn(from, to) - (to - from)) / 360) * 360;
  if (degrees === 0) return "";
  return degrees > 0 ? ` + ${degrees}` : ` − ${-degrees}`;
}
