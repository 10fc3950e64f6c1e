import { oneOf } from "./choice.ts";
import { type Limits, within } from "./limits.ts";
import type { Degrees, Feet, Knots, Seconds } from "./quantity.ts";
import { type Derivative, integrate } from "./runge-kutta.ts";
import { cos, feet, G, metresPerSecond, radians } from "./si.ts";

/** What the pilot is taken to hold while the bank goes uncorrected. */
export type BankModel = "vertical-force" | "angle-of-attack-held" | "attitude-held";

export const bankModels: readonly BankModel[] = ["vertical-force", "angle-of-attack-held", "attitude-held"];

export const HELD_SPEED: Limits = { quantity: "true airspeed", unit: "kt", from: 20, to: 700 };
/** Steeper, and the angle of attack that the models ask for would be past the stall. */
export const HELD_BANK: Limits = { quantity: "bank", unit: "deg", from: -60, to: 60 };
export const HELD_TIME: Limits = { quantity: "time", unit: "s", from: 0, to: 60 };
const SHORT_TIME: Limits = { ...HELD_TIME, to: 15 };
export const LIFT_OVER_DRAG: Limits = { quantity: "lift over drag", unit: "plain", from: 5, to: 60 };
export const ANGLE_FROM_ZERO_LIFT: Limits = { quantity: "angle from zero lift", unit: "deg", from: 1, to: 20 };

/** The longest step, s, and the part of the time in which the path follows the angle of attack that a step may take. */
const LONGEST_STEP = 0.1;
const PART_OF_RESPONSE = 0.1;

/** What the equations need to know of the flight before the bank; angles in radians. */
interface Trim {
  readonly V: number;
  readonly cosBank: number;
  readonly liftOverDrag: number;
  readonly angleFromZeroLift: number;
}

/**
 * Height lost from level flight while a bank is held and nothing is done about it. The bank is there at once, the
 * flight stays coordinated, thrust is the drag of level flight. In each model the path angle γ and the speed V obey
 *
 *     γ' = g (L cos φ / W − cos γ) / V,   V' = g ((T − D) / W − sin γ),   h' = V sin γ
 *
 * - 'vertical-force': the lift stays as large as the weight, V as it was; γ settles at −φ.
 * - 'angle-of-attack-held': L / W = (V / V₀)², D = L over the constant ratio of lift to drag.
 * - 'attitude-held': the fuselage lay along the path in level flight and keeps its pitch of 0; without sideslip its
 *   angle of attack is then asin(−sin γ / cos φ). Lift is proportional to the angle from zero lift; lift over drag
 *   stays as it was, as it nearly does about the best glide.
 *
 * @param tas 20 to 700 kt
 * @param bank 60° at most, either way; its sign is ignored
 * @param time 0 to 60 s; to 15 s in 'angle-of-attack-held', which begins a slow oscillation of speed and path
 * @param model what is held
 * @param options liftOverDrag of level flight, 5 to 60, 10 unless given; angleFromZeroLift of the wing in level
 * flight, 1 to 20°, 5 unless given
 * @returns zero or negative: at 100 kt, 20° and 10 s −95, −56 and −9 ft
 * @throws {OutOfRange} outside those limits
 * @source forces along, across and above the path; zero sideslip: sin γ = cos α sin θ − sin α cos φ cos θ
 */
export function heightInUncompensatedBank(
  tas: Knots,
  bank: Degrees,
  time: Seconds,
  model: BankModel,
  options: { readonly liftOverDrag?: number; readonly angleFromZeroLift?: Degrees } = {},
): Feet {
  const { liftOverDrag = 10, angleFromZeroLift = 5 } = options;
  const held = oneOf("model", bankModels, model);
  const trim: Trim = {
    V: metresPerSecond(within(HELD_SPEED, tas)),
    cosBank: cos(within(HELD_BANK, bank)),
    liftOverDrag: within(LIFT_OVER_DRAG, liftOverDrag),
    angleFromZeroLift: radians(within(ANGLE_FROM_ZERO_LIFT, angleFromZeroLift)),
  };
  within(held === "angle-of-attack-held" ? SHORT_TIME : HELD_TIME, time);
  const step = Math.min(LONGEST_STEP, (PART_OF_RESPONSE * trim.V * trim.angleFromZeroLift) / G);
  const [, , height = 0] = integrate(rates(held, trim), [trim.V, 0, 0], time, Math.ceil(time / step));
  return feet(height);
}

/** Rates of the state speed, path angle, height. */
function rates(model: BankModel, trim: Trim): Derivative {
  const { V, cosBank, liftOverDrag } = trim;
  return (_, [speed = V, path = 0]) => {
    const lift = liftOverWeight(model, trim, speed, path);
    const excessThrust = model === "vertical-force" ? Math.sin(path) : (1 - lift) / liftOverDrag;
    return [
      G * (excessThrust - Math.sin(path)),
      (G * (lift * cosBank - Math.cos(path))) / speed,
      speed * Math.sin(path),
    ];
  };
}

function liftOverWeight(model: BankModel, { V, cosBank, angleFromZeroLift }: Trim, speed: number, path: number) {
  if (model === "vertical-force") return 1;
  const dynamic = (speed / V) ** 2;
  if (model === "angle-of-attack-held") return dynamic;
  return dynamic * (1 - Math.asin(Math.sin(path) / cosBank) / angleFromZeroLift);
}
