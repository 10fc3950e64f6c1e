import { magneticDip } from "../../calc/compass.ts";
import type { Rule } from "./rule.ts";
import { shown } from "./rule.ts";

/** How far the dip may lie from a dipole's at that latitude, degrees: the Earth's field is crooked. */
const CROOKED = 30;

const [latitude, dip] = ["place.latitude", "place.dip"] as const;

const consistent: Rule = (number) => {
  const [north, down] = [number(latitude), number(dip)];
  if (!(Math.abs(north) <= 90)) return undefined;
  const expected = magneticDip(north);
  if (!(Math.abs(down - expected) > CROOKED)) return undefined;
  return {
    field: dip,
    also: [latitude],
    message: `Magnetic dip, ${shown(dip, down)}, can’t be at latitude ${shown(latitude, north)}: about ${shown(dip, expected, 0)} is to be expected.`,
    mend: "Mend its sign or the latitude’s, or leave one of the two out.",
  };
};

const eitherOfThem: Rule = (_, values) => {
  if (!values.has("place.title") || values.has(latitude) || values.has(dip)) return undefined;
  return {
    field: latitude,
    also: [dip],
    message: "Neither the latitude nor the magnetic dip is given.",
    mend: "Give one of them: the other is found from it.",
  };
};

/** What a place asks of its numbers. */
export const placeRules: readonly Rule[] = [consistent, eitherOfThem];
