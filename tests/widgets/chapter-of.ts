import type { Given, Work } from "../../src/cells/chapter.ts";
import type { Facts } from "../../src/cells/known.ts";
import { Worksheet } from "../../src/cells/worksheet.ts";

export const tas: Given = {
  name: "tas",
  quantity: "tas",
  label: "True airspeed",
  unit: "kt",
  value: 95,
  from: 60,
  to: 180,
  step: 5,
  digits: 0,
  circle: false,
};
export const bank: Given = {
  ...tas,
  name: "bank",
  quantity: "bank",
  label: "Bank",
  unit: "deg",
  value: 15,
  from: 5,
  to: 45,
  step: 1,
};
export const double: Work = {
  name: "double",
  is: "2 * tas",
  unit: "kt",
  digits: 0,
  label: "Twice the speed",
  circle: false,
};
export const radius: Work = {
  name: "radius",
  is: "turnRadius(tas, bank)",
  unit: "NM",
  digits: 2,
  label: "Radius",
  circle: false,
};

const nothing: Facts = { title: "", owner: "", facts: {} };

/** A worksheet of speed and bank that tells its listeners at once. */
export const worksheetOf = (work: readonly Work[] = [double, radius]): Worksheet =>
  new Worksheet({ given: [tas, bank], work }, { aircraft: nothing, place: nothing });
