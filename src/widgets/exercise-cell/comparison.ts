import { escaped } from "../escaped.ts";

const WIDTH = 280;
const HEIGHT = 96;
/** Beyond this ratio the shorter bar says nothing. */
const MOST = 40;

/**
 * Asked and given as two bars to one scale, as SVG; '' where bars would show nothing: other signs, nothing at all,
 * the same when printed, or one too short to see.
 *
 * @param print a value in the exercise's unit, as the verdict prints it
 */
export function comparisonSvg(asked: number, yours: number, print: (value: number) => string): string {
  const [askedText, yoursText] = [print(asked), print(yours)];
  const [one, other] = [Math.abs(asked), Math.abs(yours)];
  const longest = Math.max(one, other);
  if (!(asked * yours > 0) || askedText === yoursText || !(longest / Math.min(one, other) <= MOST)) return "";
  const length = (value: number): number => Math.round((value / longest) * (WIDTH - 2) * 10) / 10;
  const title = `Asked ${askedText}, yours ${yoursText}, to one scale`;
  return `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" role="img" aria-label="${escaped(title)}"><path class="axis" d="M1 0V${HEIGHT}"/>${bar(
    0,
    length(one),
    `asked ${askedText}`,
    "bar",
  )}${bar(50, length(other), `yours ${yoursText}`, "bar open")}</svg>`;
}

const bar = (top: number, length: number, label: string, kind: string): string =>
  `<text class="name" x="8" y="${top + 15}">${escaped(label)}</text><rect class="${kind}" x="1" y="${top + 24}" width="${length}" height="10"/>`;
