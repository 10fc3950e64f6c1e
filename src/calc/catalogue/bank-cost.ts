import { climbLostInTurn, dragInTurn, INDUCED_SHARE, LIFT_OVER_DRAG, MODERATE_BANK } from "../attitude.ts";
import { TRUE_AIRSPEED } from "../ranges.ts";
import { argument } from "./argument.ts";
import type { Formula } from "./formula.ts";
import { plain } from "./printed.ts";
import { figures, given } from "./signs.ts";

const bank = argument(MODERATE_BANK, { name: "bank", symbol: "\\varphi", example: 30 });
const inducedShare = argument(INDUCED_SHARE, { name: "inducedShare", symbol: "k", default: 0.5, example: 0.5 });
const drag = "Induced drag grows with the square of the load, the rest stays, at the same speed.";

export const bankCost: readonly Formula[] = [
  {
    name: "dragInTurn",
    topic: "turns",
    words: "drag in a turn over drag wings level",
    symbol: "D/D_0",
    args: [bank, inducedShare],
    result: { unit: "plain" },
    digits: 3,
    tex: "1 + k\\tan^2\\varphi",
    call: dragInTurn,
    steps: (angle: number, share: number) => [
      {
        what: "Drag over drag wings level",
        symbol: "D/D_0",
        tex: "1 + k\\tan^2\\varphi",
        numbers: `1 + ${plain(share)} × (tan ${given(angle)}°)²`,
      },
    ],
    kind: "model",
    assumes: `${drag} k is the induced share of the drag wings level.`,
    source: "induced drag proportional to the square of lift",
  },
  {
    name: "climbLostInTurn",
    topic: "turns",
    words: "rate of climb lost in a turn",
    symbol: "\\Delta w",
    args: [
      argument(TRUE_AIRSPEED, { name: "tas", symbol: "V", example: 75 }),
      bank,
      argument(LIFT_OVER_DRAG, { name: "liftOverDrag", symbol: "L/D", default: 10, example: 10 }),
      inducedShare,
    ],
    result: { unit: "ft/min" },
    digits: 0,
    tex: "V\\,\\frac{k\\tan^2\\varphi}{L/D}",
    call: climbLostInTurn,
    steps: (tas: number, angle: number, liftOverDrag: number, share: number) => {
      const V = figures((tas * 1852) / 0.3048 / 60, 5);
      return [
        { what: "True airspeed", symbol: "V", numbers: `${plain(tas)} × 101.27`, comes: `${V} ft/min` },
        {
          what: "Climb lost",
          symbol: "\\Delta w",
          tex: "V\\,\\frac{k\\tan^2\\varphi}{L/D}",
          numbers: `${V} × ${plain(share)} × (tan ${given(angle)}°)² / ${plain(liftOverDrag)}`,
        },
      ];
    },
    kind: "model",
    assumes: `${drag} Power as it was; lift over drag wings level.`,
    source: "excess power over weight",
  },
];
