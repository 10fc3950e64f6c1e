import { plain, significant, term } from "./printed.ts";

/** A number as given, in brackets where it is negative: a term after another sign. */
export const given = (value: number): string => term(plain(value));

/** The magnitude of a number as given. */
export const size = (value: number): string => plain(Math.abs(value));

/** A number with so many significant figures; what rounding left of nothing is nothing. */
export const figures = (value: number, digits: number): string =>
  significant(Math.abs(value) < 1e-9 ? 0 : value, digits);

/** What brings an angle on to the circle: ' + 360', ' − 720', or nothing. */
export function ontoCircle(angle: number, circle: number): string {
  const turns = Math.round((circle - angle) / 360) * 360;
  return turns === 0 ? "" : ` ${turns > 0 ? "+" : "−"} ${Math.abs(turns)}`;
}

/**
 * The direction of a vector worked by hand: an arctan of the smaller part over the larger, and the quarter it is in.
 *
 * @param along, across the parts as printed, toward 0° and toward 90°
 */
export function direction(along: string, across: string): string {
  const [x, y] = [along, across].map((part) => Number(part.replace("−", "-"))) as [number, number];
  if (Math.abs(y) > Math.abs(x)) return `${y > 0 ? 90 : 270} − arctan (${along} / ${term(across)})`;
  const arctan = `arctan (${across} / ${term(along)})`;
  if (x < 0) return `180 + ${arctan}`;
  return y < 0 ? `360 + ${arctan}` : arctan;
}
