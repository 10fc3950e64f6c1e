import type { Facts } from "../../src/cells/known.ts";
import { drawFigure } from "../../src/widgets/drawing/index.ts";
import { figureNamed } from "../../src/widgets/figures.ts";

const { aircraft }: { aircraft: Facts } = JSON.parse(document.getElementById("sheet")!.textContent);
const cells = [...document.querySelectorAll<HTMLElement>("figure-cell")].slice(0, 2);

/** Draws both figures from nothing at a speed, each in the place of the drawing that shows. */
function drawAnew(tas: number): void {
  for (const [i, cell] of cells.entries()) {
    const figure = figureNamed(cell.dataset["figure"]!)!;
    const state = { values: { tas, bank: 15 }, kept: undefined, aircraft };
    const drawing = drawFigure(figure, state, { width: 580, id: `anew-${i}`, document });
    const shown = [...cell.querySelectorAll(".plot svg.drawing")].find((one) => one.getClientRects().length > 0);
    shown!.replaceWith(drawing);
  }
}

Object.assign(window, { drawAnew });
