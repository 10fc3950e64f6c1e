import { type PathPoint, turnPath } from "../calc/turn-path.ts";
import type { Given } from "../cells/chapter.ts";
import { printed } from "../cells/printed.ts";

const width = 280;
const height = 176;
const half = 0.5;

/** A drawing for a title's margin, with its caption, where a chapter gives a speed and a bank; else nothing. */
export function frontispiece(given: readonly Given[], rollRate: number): string {
  const [tas, bank] = ["tas", "bank"].map((quantity) => given.find((one) => one.quantity === quantity));
  if (!tas || !bank) return "";
  const caption = `A half turn at ${printed(tas.value, tas)} and ${printed(bank.value, bank)}, seen from above; a mark every 10 s.`;
  return `${drawing(tas.value, bank.value, rollRate)}<figcaption>${caption}</figcaption>`;
}

/** A half turn, seen from above: path, a mark every ten seconds, the aeroplane, a scale bar. SVG. */
function drawing(tas: number, bank: number, rollRate: number): string {
  const turn = turnPath({ tas, bank, headingChange: 180, rollInRate: rollRate, rollOutRate: rollRate, step: 0.5 });
  const across = Math.max(...turn.map(({ east }) => east));
  const up = Math.max(...turn.map(({ north }) => north));
  const perMile = Math.min((width - 130) / across, (height - 56) / up);
  const x = ({ east }: PathPoint) => 14 + east * perMile;
  const y = ({ north }: PathPoint) => height - 30 - north * perMile;
  const path = `M${turn.map((point) => `${x(point).toFixed(1)},${y(point).toFixed(1)}`).join("L")}`;
  const parts = [
    `<path class="curve ink" d="${path}"/>`,
    ...timeMarks(turn, x, y),
    aeroplane(x(turn[0]!), y(turn[0]!)),
    scaleBar(width - 14 - half * perMile, height - 24, perMile),
  ];
  const label = `A half turn at ${tas} knots and ${bank} degrees of bank seen from above, ${Math.round(turn.at(-1)!.time)} seconds long.`;
  return `<svg class="drawing" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${label}">${parts.join("")}</svg>`;
}

type Place = (point: PathPoint) => number;

function timeMarks(turn: readonly PathPoint[], x: Place, y: Place): string[] {
  const last = turn.at(-1)!.time;
  const times = Array.from({ length: Math.floor(last / 10) }, (_, i) => (i + 1) * 10);
  return times.flatMap((time) => {
    const point = turn.find((one) => one.time >= time)!;
    const outward = ((point.turned - 90) * Math.PI) / 180;
    const [dx, dy] = [Math.sin(outward), -Math.cos(outward)];
    const at = (distance: number) =>
      [x(point) + distance * dx, y(point) + distance * dy].map((value) => value.toFixed(1));
    const [[x1, y1], [x2, y2], [tx, ty]] = [at(-5), at(5), at(11)];
    const mark = `<line class="mark" x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}"/>`;
    const named = time % 20 === 0;
    return named
      ? [mark, `<text class="tick" text-anchor="${anchorOf(dx)}" x="${tx}" y="${ty}" dy="4">${time} s</text>`]
      : [mark];
  });
}

/** A name stands clear of its mark on the mark's own side. */
const anchorOf = (dx: number): string => (dx > 0.4 ? "start" : dx < -0.4 ? "end" : "middle");

/** Fuselage, wing and tail as three strokes: a place, not a type. */
const aeroplane = (x: number, y: number): string =>
  `<g class="aeroplane" transform="translate(${x.toFixed(1)} ${y.toFixed(1)})"><line y1="-10" y2="11"/><line x1="-11" x2="11" y1="-2" y2="-2"/><line x1="-4.5" x2="4.5" y1="10" y2="10"/></g>`;

/** Half a nautical mile in two parts, as on a map. */
function scaleBar(x: number, y: number, perMile: number): string {
  const part = (half * perMile) / 2;
  const bar = (i: number, open: string) =>
    `<rect class="bar${open}" x="${(x + i * part).toFixed(1)}" y="${y}" width="${part.toFixed(1)}" height="5"/>`;
  const names = `<text class="tick" text-anchor="middle" x="${x.toFixed(1)}" y="${y + 21}">0</text><text class="tick" text-anchor="end" x="${(x + 2 * part + 10).toFixed(1)}" y="${y + 21}">${half} NM</text>`;
  return bar(0, "") + bar(1, " open") + names;
}
