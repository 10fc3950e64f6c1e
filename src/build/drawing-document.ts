import { parseHTML } from "linkedom";

/** A document for Plot to draw in while the site is built. */
export const domOf = (): Document =>
  parseHTML("<!doctype html><html><body></body></html>").document as unknown as Document;
