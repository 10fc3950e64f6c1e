import type { Side } from "../radio.ts";
import { cos, feet, METRES_IN_MILE, metres, nauticalMiles } from "../si.ts";
import type { Step } from "./formula.ts";
import { plain } from "./printed.ts";
import { figures } from "./signs.ts";

/** The row that brings a height into nautical miles. */
export const milesStep = (height: number): Step & { readonly comes: string } => ({
  what: "Height",
  symbol: "h",
  numbers: `${plain(height)} / 6076.1`,
  comes: `${figures(nauticalMiles(metres(height)), 5)} NM`,
});

/** The row that brings a distance into feet. */
export const feetStep = (distance: number): Step & { readonly comes: string } => ({
  what: "Distance",
  symbol: "d",
  numbers: `${plain(distance)} × 6076.1`,
  comes: `${figures(distance * feet(METRES_IN_MILE), 5)} ft`,
});

export function groundDistanceSteps(range: number, height: number): Step[] {
  const up = milesStep(height);
  return [
    up,
    {
      what: "Ground distance",
      symbol: "d",
      tex: "\\sqrt{r^2 - h^2}",
      numbers: `√(${plain(range)}² − ${up.comes.slice(0, -3)}²)`,
    },
  ];
}

export function interceptSteps(radius: number, distance: number, interceptAngle: number): Step[] {
  const across = figures(radius * (1 - cos(interceptAngle)), 5);
  return [
    {
      what: "Across the course in the turn",
      symbol: "y",
      tex: "R(1 - \\cos\\theta)",
      numbers: `${plain(radius)} × (1 − cos ${plain(interceptAngle)}°)`,
      comes: `${across} NM`,
    },
    { what: "Lead", symbol: "\\beta", tex: "\\arcsin\\frac{y}{d}", numbers: `arcsin (${across} / ${plain(distance)})` },
  ];
}

export function arcSteps(arc: number, radius: number, from: Side): Step[] {
  const [A, R] = [plain(arc), plain(radius)];
  return [
    from === "outside"
      ? { what: "Lead", symbol: "l", tex: "\\sqrt{A^2 + 2AR} - A", numbers: `√(${A}² + 2 × ${A} × ${R}) − ${A}` }
      : { what: "Lead", symbol: "l", tex: "A - \\sqrt{A^2 - 2AR}", numbers: `${A} − √(${A}² − 2 × ${A} × ${R})` },
  ];
}
