import { impactRatio } from "../airspeed.ts";
import { isaPressure } from "../atmosphere.ts";
import type { Drain } from "../pitot-static.ts";
import { cos } from "../si.ts";
import type { Step } from "./formula.ts";
import { fixed, plain, term } from "./printed.ts";
import { figures, given } from "./signs.ts";

/** The speed of sound at 15 °C, kt. */
const SOUND = 661.4786;
/** Where the standard temperature stops falling, ft. */
const TROPOPAUSE = 36_089;

export function blockedPitotSteps(airspeed: number, blockedAt: number, altitude: number, drain: Drain): Step[] {
  if (drain === "open") return [{ what: "Reading", symbol: "V_r", numbers: "0" }];
  return lineSteps(airspeed, { pitotAt: blockedAt, staticAt: altitude });
}

export function blockedStaticSteps(airspeed: number, blockedAt: number, altitude: number): Step[] {
  return lineSteps(airspeed, { pitotAt: altitude, staticAt: blockedAt });
}

export function pitchSteps(levelPitch: number, path: number, bank: number, angleFromZeroLift: number): Step[] {
  const load = figures(cos(path) / cos(bank), 5);
  const alpha = levelPitch + angleFromZeroLift * (cos(path) / cos(bank) - 1);
  const α = `${term(figures(alpha, 5))}°`;
  const [γ, φ] = [path, bank].map((angle) => `${given(angle)}°`);
  return [
    {
      what: "Load",
      symbol: "n",
      tex: "\\frac{\\cos\\gamma}{\\cos\\varphi}",
      numbers: `cos ${γ} / cos ${φ}`,
      comes: load,
    },
    {
      what: "Angle of attack, from the level pitch",
      symbol: "\\alpha",
      tex: "\\theta_0 + \\alpha_0(n - 1)",
      numbers: `${plain(levelPitch)} + ${plain(angleFromZeroLift)} × (${load} − 1)`,
      comes: `${figures(alpha, 5)}°`,
    },
    {
      what: "Pitch",
      symbol: "\\theta",
      tex: "\\arctan(\\tan\\alpha\\cos\\varphi) + \\arcsin\\frac{\\sin\\gamma}{\\sqrt{\\cos^2\\alpha + \\sin^2\\alpha\\cos^2\\varphi}}",
      numbers: `arctan (tan ${α} × cos ${φ}) + arcsin (sin ${γ} / √((cos ${α})² + (sin ${α} × cos ${φ})²))`,
    },
  ];
}

interface Lines {
  readonly pitotAt: number;
  readonly staticAt: number;
}

/** From the pressures in both lines to the reading; none above the tropopause, where the law of pressure is another. */
function lineSteps(airspeed: number, { pitotAt, staticAt }: Lines): Step[] {
  if (Math.max(pitotAt, staticAt) > TROPOPAUSE) return [];
  const impact = 1013.25 * impactRatio(airspeed / SOUND);
  const difference = isaPressure(pitotAt) + impact - isaPressure(staticAt);
  const [q, total, outside, rest] = [impact, isaPressure(pitotAt), isaPressure(staticAt), difference].map((pressure) =>
    fixed(pressure, 3),
  ) as [string, string, string, string];
  return [
    {
      what: "Impact pressure",
      symbol: "q",
      tex: "p_0\\left(\\left(1 + 0.2\\,(V_C/a_0)^2\\right)^{3.5} - 1\\right)",
      numbers: `1013.25 × ((1 + 0.2 × (${plain(airspeed)} / 661.48)²)^3.5 − 1)`,
      comes: `${q} hPa`,
    },
    pressureStep("Static pressure where the pitot line's air is from", "p_1", pitotAt, total),
    pressureStep("Pressure in the static line", "p_2", staticAt, outside),
    {
      what: "Across the capsule",
      symbol: "q_r",
      tex: "p_1 + q - p_2",
      numbers: `${total} + ${q} − ${outside}`,
      comes: `${rest} hPa`,
    },
    {
      what: "Reading",
      symbol: "V_r",
      tex: difference <= 0 ? "0" : "a_0\\sqrt{5\\left(\\left(1 + q_r/p_0\\right)^{1/3.5} - 1\\right)}",
      numbers: difference <= 0 ? "0" : `661.48 × √(5 × ((1 + ${rest} / 1013.25)^(1 / 3.5) − 1))`,
    },
  ];
}

const pressureStep = (what: string, symbol: string, altitude: number, pressure: string): Step => ({
  what,
  symbol,
  tex: "1013.25\\left(1 - \\tfrac{h}{145\\,442}\\right)^{5.2559}",
  numbers: `1013.25 × (1 − ${given(altitude)} / 145442.16)^5.25588`,
  comes: `${pressure} hPa`,
});
