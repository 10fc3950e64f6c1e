import { radians } from "../si.ts";
import { trackMadeGood, turnInWind, windComponents, windTriangle } from "../wind.ts";
import type { Step } from "./formula.ts";
import { plain, term } from "./printed.ts";
import { direction, figures, given, ontoCircle, size } from "./signs.ts";

export function triangleSteps(course: number, tas: number, windFrom: number, windSpeed: number): Step[] {
  const rows = componentRows(course, windFrom, windSpeed);
  const { crosswind: across, headwind: along } = windComponents(course, windFrom, windSpeed);
  const triangle = windTriangle(course, tas, windFrom, windSpeed);
  const sine = `arcsin (${figures(across, 5)} / ${plain(tas)})`;
  const correctionRow = { what: "Correction", symbol: "c", tex: "\\arcsin\\frac{W_c}{V}", numbers: sine };
  if (triangle === null) return [...rows, { ...correctionRow, numbers: `${sine} has no answer to fly` }];
  const { heading, groundSpeed, correction } = triangle;
  const angle = term(figures(correction, 5));
  return [
    ...rows,
    { ...correctionRow, comes: `${figures(correction, 5)}°` },
    {
      what: "Heading",
      symbol: "\\psi",
      tex: "\\chi + c",
      numbers: `${plain(course)} + ${angle}${ontoCircle(course + correction, heading)}`,
      comes: `${figures(heading, 5)}°`,
    },
    {
      what: "Ground speed",
      symbol: "G",
      tex: "V\\cos c - W_h",
      numbers: `${plain(tas)} × cos ${angle}° − ${term(figures(along, 5))} = ${figures(groundSpeed, 4)} kt`,
    },
  ];
}

export function componentSteps(course: number, windFrom: number, windSpeed: number): Step[] {
  const [angle, crosswind, { comes, ...headwind }] = componentRows(course, windFrom, windSpeed);
  return [angle, crosswind, { ...headwind, numbers: `${headwind.numbers} = ${comes}` }];
}

export function trackSteps(heading: number, tas: number, windFrom: number, windSpeed: number): Step[] {
  const { track, groundSpeed } = trackMadeGood(heading, tas, windFrom, windSpeed);
  const north = figures(groundSpeed * Math.cos(radians(track)), 5);
  const east = figures(groundSpeed * Math.sin(radians(track)), 5);
  const [V, W, ψ, δ] = [plain(tas), plain(windSpeed), `${given(heading)}°`, `${given(windFrom)}°`];
  return [
    {
      what: "Toward north",
      symbol: "N",
      tex: "V\\cos\\psi - W\\cos\\delta",
      numbers: `${V} × cos ${ψ} − ${W} × cos ${δ}`,
      comes: `${north} kt`,
    },
    {
      what: "Toward east",
      symbol: "E",
      tex: "V\\sin\\psi - W\\sin\\delta",
      numbers: `${V} × sin ${ψ} − ${W} × sin ${δ}`,
      comes: `${east} kt`,
    },
    {
      what: "Track",
      symbol: "\\chi",
      tex: "\\operatorname{atan2}(E, N)",
      numbers: direction(north, east),
      comes: `${figures(track, 5)}°`,
    },
    {
      what: "Ground speed",
      symbol: "G",
      tex: "\\sqrt{N^2 + E^2}",
      numbers: `√(${term(north)}² + ${term(east)}²) = ${figures(groundSpeed, 4)} kt`,
    },
  ];
}

export function turnSteps(
  heading: number,
  headingChange: number,
  tas: number,
  rate: number,
  windFrom: number,
  windSpeed: number,
): Step[] {
  const { north, east, time } = turnInWind(heading, headingChange, tas, rate, windFrom, windSpeed);
  const signed = headingChange < 0 ? -1 : 1;
  const radius = term(figures((signed * tas) / (3600 * radians(Math.abs(rate))), 5));
  const carried = figures((windSpeed * time) / 3600, 5);
  const [ψ, last, δ] = [heading, heading + headingChange, windFrom].map((angle) => `${given(angle)}°`);
  return [
    { what: "Time", symbol: "t", tex: "\\frac{|\\Delta\\psi|}{\\omega}", ...timeRow(headingChange, rate, time) },
    {
      what: headingChange < 0 ? "Radius, to the left" : "Radius",
      symbol: "R",
      tex: headingChange < 0 ? "-\\frac{V}{\\omega}" : "\\frac{V}{\\omega}",
      numbers: `${headingChange < 0 ? "−" : ""}${plain(tas)} / 3600 / (${size(rate)} × 0.0174533)`,
      comes: `${radius.replace(/[()]/g, "")} NM`,
    },
    {
      what: "Carried by the wind",
      symbol: "D",
      tex: "W\\,t",
      numbers: `${plain(windSpeed)} × ${figures(time, 5)} / 3600`,
      comes: `${carried} NM`,
    },
    {
      what: "North",
      symbol: "s_N",
      tex: "R(\\sin\\psi_2 - \\sin\\psi) - D\\cos\\delta",
      numbers: `${radius} × (sin ${last} − sin ${ψ}) − ${carried} × cos ${δ}`,
      comes: `${figures(north, 4)} NM`,
    },
    {
      what: "East",
      symbol: "s_E",
      tex: "R(\\cos\\psi - \\cos\\psi_2) - D\\sin\\delta",
      numbers: `${radius} × (cos ${ψ} − cos ${last}) − ${carried} × sin ${δ} = ${figures(east, 4)} NM`,
    },
  ];
}

function timeRow(headingChange: number, rate: number, time: number): Pick<Step, "numbers" | "comes"> {
  return { numbers: `${size(headingChange)} / ${size(rate)}`, comes: `${figures(time, 5)} s` };
}

function componentRows(course: number, windFrom: number, windSpeed: number): [Step, Step, Step] {
  const { headwind, crosswind } = windComponents(course, windFrom, windSpeed);
  const angle = `${given(windFrom - course)}°`;
  return [
    {
      what: "Wind from the course",
      symbol: "\\alpha",
      tex: "\\delta - \\chi",
      numbers: `${plain(windFrom)} − ${given(course)}`,
      comes: `${plain(windFrom - course)}°`,
    },
    {
      what: "Crosswind",
      symbol: "W_c",
      tex: "W\\sin\\alpha",
      numbers: `${plain(windSpeed)} × sin ${angle}`,
      comes: `${figures(crosswind, 5)} kt`,
    },
    {
      what: "Headwind",
      symbol: "W_h",
      tex: "W\\cos\\alpha",
      numbers: `${plain(windSpeed)} × cos ${angle}`,
      comes: `${figures(headwind, 5)} kt`,
    },
  ];
}
