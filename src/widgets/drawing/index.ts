export { Drawing, type DrawingOptions, drawFigure } from "./drawing.ts";
