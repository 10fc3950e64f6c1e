import { airspeed } from "./airspeed.ts";
import { altimetry } from "./altimetry.ts";
import { atmosphere } from "./atmosphere.ts";
import { bankCost } from "./bank-cost.ts";
import { compass } from "./compass.ts";
import { fit } from "./fit.ts";
import type { Formula } from "./formula.ts";
import { holding } from "./holding.ts";
import { leads } from "./leads.ts";
import { levelOff } from "./level-off.ts";
import { panel } from "./panel.ts";
import { radio } from "./radio.ts";
import { spiral } from "./spiral.ts";
import { turns } from "./turns.ts";
import { units } from "./units.ts";
import { vertical } from "./vertical.ts";
import { vestibular } from "./vestibular.ts";
import { wind } from "./wind.ts";

export * from "./formula.ts";

/** Every formula, in the order of the formula sheet. */
export const catalogue: readonly Formula[] = [
  ...units,
  ...atmosphere,
  ...airspeed,
  ...turns,
  ...bankCost,
  ...leads,
  ...levelOff,
  ...vertical,
  ...altimetry,
  ...compass,
  ...wind,
  ...holding,
  ...radio,
  ...vestibular,
  ...panel,
  ...spiral,
  ...fit,
];
