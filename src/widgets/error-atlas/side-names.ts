import { textLayer, widthOf } from "../drawing/labels.ts";
import type { Frame, Layer } from "../drawing/panel.ts";
import type { AtlasModel } from "./shown-model.ts";

/** What an error above and one below zero is, in the corners of the strip: at the side where fewer curves run. */
export function sideNames(model: AtlasModel, frame: Frame): Layer[] {
  const { safe, over, under } = model.rule;
  const said = (words: string, is: "over" | "under") => (safe === is ? `safe side: ${words}` : words);
  const look = (is: "over" | "under"): string => `name ${safe === is ? "ink" : "soft"} halo`;
  return [
    textLayer(look("over"), "start", [corner(model, frame, said(over, "over"), frame.top + 11)]),
    textLayer(look("under"), "start", [corner(model, frame, said(under, "under"), frame.bottom - 11)]),
  ];
}

function corner(model: AtlasModel, frame: Frame, words: string, y: number): readonly [number, number, string] {
  const width = widthOf(words, 13) * 1.06;
  const [left, right] = [frame.left + 12, frame.right - 6 - width];
  return [met(model, frame, left, width, y) <= met(model, frame, right, width, y) ? left : right, y, words];
}

/** How many points of the curves lie where the words would stand. */
function met({ curves }: AtlasModel, frame: Frame, start: number, width: number, y: number): number {
  let count = 0;
  for (const { x, error } of curves)
    for (let i = 0; i < x.length; i++) {
      const across = frame.x(x[i]!);
      if (across >= start - 4 && across <= start + width + 4 && Math.abs(frame.y(error[i]!) - y) < 14) count++;
    }
  return count;
}
