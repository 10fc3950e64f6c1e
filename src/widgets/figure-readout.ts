import type { Readout } from "./figure.ts";
import { say } from "./said.ts";

/** Shows a readout in its row as built. */
export function writeReadout(row: Element, { number, unit, kept, aside }: Readout): void {
  writeNumber(row.querySelector(".now")!, { number, unit });
  const was = row.querySelector<HTMLElement>(".was")!;
  say(was, kept === undefined ? "" : `kept ${kept}`);
  was.hidden = kept === undefined;
  const beside = row.querySelector(".aside");
  if (beside) say(beside, aside ?? "");
}

/** Shows a number large and its unit small. */
export function writeNumber(now: Element, { number, unit }: Pick<Readout, "number" | "unit">): void {
  const [large, small] = now.children;
  say(large!, unit === "°" ? `${number}°` : number);
  say(small!, unit === "°" ? "" : unit);
}
