import type { Turns } from "../bounds.ts";
import { rollOutHeadingByRule } from "../compass.ts";
import { cos, degrees, G, metresPerSecond, sin, tan } from "../si.ts";
import type { Step } from "./formula.ts";
import { plain } from "./printed.ts";
import { direction, figures, given, ontoCircle } from "./signs.ts";

export function turningSteps(heading: number, dip: number, bank: number): Step[] {
  const along = figures(cos(heading), 5);
  const across = figures(sin(heading) * cos(bank) - tan(dip) * sin(bank), 5);
  const [H, I, φ] = [heading, dip, bank].map((angle) => `${given(angle)}°`);
  return [
    { what: "Field toward 0 on the card", symbol: "x", tex: "\\cos H", numbers: `cos ${H}`, comes: along },
    {
      what: "Field toward 90 on the card",
      symbol: "y",
      tex: "\\sin H\\cos\\varphi - \\tan I\\sin\\varphi",
      numbers: `sin ${H} × cos ${φ} − tan ${I} × sin ${φ}`,
      comes: across,
    },
    readingStep(along, across),
  ];
}

export function acceleratingSteps(heading: number, dip: number, acceleration: number): Step[] {
  const θ = degrees(Math.atan(metresPerSecond(acceleration) / G));
  const along = figures(cos(heading) * cos(θ) + tan(dip) * sin(θ), 5);
  const across = figures(sin(heading), 5);
  const [H, I] = [heading, dip].map((angle) => `${given(angle)}°`);
  const tilt = `${given(Number(θ.toPrecision(5)))}°`;
  return [
    {
      what: "Tilt of the card",
      symbol: "\\theta",
      tex: "\\arctan\\frac{a}{g}",
      numbers: `arctan (${plain(acceleration)} × 0.51444 / 9.80665)`,
      comes: `${figures(θ, 5)}°`,
    },
    {
      what: "Field toward 0 on the card",
      symbol: "x",
      tex: "\\cos H\\cos\\theta + \\tan I\\sin\\theta",
      numbers: `cos ${H} × cos ${tilt} + tan ${I} × sin ${tilt}`,
      comes: along,
    },
    { what: "Field toward 90 on the card", symbol: "y", tex: "\\sin H", numbers: `sin ${H}`, comes: across },
    readingStep(along, across),
  ];
}

export function rollOutSteps(target: number, turn: Turns, dip: number, bank: number, lead: number): Step[] {
  const right = turn === "right";
  const heading = right ? target - lead : target + lead;
  return [
    {
      what: "Heading when the roll-out begins",
      symbol: "H'",
      tex: right ? "H - l" : "H + l",
      numbers: `${plain(target)} ${right ? "−" : "+"} ${plain(lead)}`,
      comes: `${plain(heading)}°`,
    },
    ...turningSteps(heading, dip, right ? Math.abs(bank) : -Math.abs(bank)),
  ];
}

export function ruleSteps(target: number, turn: Turns, latitude: number, lead: number): Step[] {
  const allowance = figures(latitude * cos(target), 4);
  const stillToGo = latitude * cos(target) + lead;
  const right = turn === "right";
  const unwrapped = right ? target - stillToGo : target + stillToGo;
  const turns = ontoCircle(unwrapped, rollOutHeadingByRule(target, turn, latitude, lead));
  return [
    {
      what: "Allowance",
      symbol: "A",
      tex: "\\lambda\\cos H",
      numbers: `${plain(latitude)} × cos ${given(target)}°`,
      comes: `${allowance}°`,
    },
    {
      what: "Reading",
      symbol: "C",
      tex: right ? "H - (A + l)" : "H + (A + l)",
      numbers: `${plain(target)} ${right ? "−" : "+"} (${allowance} + ${plain(lead)})${turns}`,
    },
  ];
}

const readingStep = (along: string, across: string): Step => ({
  what: "Reading",
  symbol: "C",
  tex: "\\operatorname{atan2}(y, x)",
  numbers: direction(along, across),
});
