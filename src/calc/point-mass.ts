import type { Limits } from "./limits.ts";
import type { Knots, LoadFactor, Plain } from "./quantity.ts";
import type { Derivative } from "./runge-kutta.ts";
import { cos, G, metresPerSecond, sin } from "./si.ts";

export const TRIM_SPEED: Limits = { quantity: "trimmed true airspeed", unit: "kt", from: 20, to: 400 };
/** The bank at which a spiral is taken to grow no more. */
export const STEEPEST = 75;
export const SPIRAL_BANK: Limits = { quantity: "bank", unit: "deg", from: 0, to: STEEPEST };
export const DOUBLING_TIME: Limits = { quantity: "doubling time", unit: "s", from: 1, to: 1e6 };
export const GLIDE_RATIO: Limits = { quantity: "lift over drag", unit: "plain", from: 3, to: 60 };

/** What the pilot and the trim hold while a point mass moves; bank in degrees at a time. */
export interface Controls {
  readonly bank: (time: number) => number;
  /** Angle of attack from zero lift over the trimmed one. */
  readonly pull: Plain;
  /** Thrust over the thrust of trimmed level flight. */
  readonly thrust: Plain;
}

/** How an aeroplane is trimmed for level flight. */
export interface Trim {
  /** 20 to 400 kt. */
  readonly trimSpeed: Knots;
  /** Lift over drag there, 3 to 60; 10 unless given. */
  readonly liftOverDrag?: Plain;
  /** Induced share of the drag there, 0 to 1; half unless given. */
  readonly inducedShare?: Plain;
}

/**
 * Rates of a point mass in air of constant density: speed V m/s, path angle γ, heading ψ, both in radians, height m.
 *
 *     V′ = g ((T − D) / W − sin γ),  γ′ = g (n cos φ − cos γ) / V,  ψ′ = g n sin φ / (V cos γ),  h′ = V sin γ
 *
 * Load n = pull × (V / trim speed)²; drag grows with (V / trim speed)², its induced share with the square of the pull.
 */
export function pointMass({ trimSpeed, liftOverDrag, inducedShare }: Required<Trim>, controls: Controls): Derivative {
  const trim = metresPerSecond(trimSpeed);
  const { bank, pull, thrust } = controls;
  const dragGrowth = 1 - inducedShare + inducedShare * pull ** 2;
  return (time, [V = trim, γ = 0]) => {
    const dynamic = (V / trim) ** 2;
    const load = pull * dynamic;
    const excess = (thrust - dragGrowth * dynamic) / liftOverDrag;
    const φ = bank(time);
    return [
      G * (excess - Math.sin(γ)),
      (G * (load * cos(φ) - Math.cos(γ))) / V,
      (G * load * sin(φ)) / (V * Math.cos(γ)),
      V * Math.sin(γ),
    ];
  };
}

/** Load of a point mass at a true airspeed in m/s. */
export function loadAt(V: number, trimSpeed: Knots, pull: Plain): LoadFactor {
  return pull * (V / metresPerSecond(trimSpeed)) ** 2;
}

/** A bank that doubles in every doubling time until it is the steepest. */
export function growingBank(bank: number, doublingTime: number): (time: number) => number {
  return (time) => Math.min(STEEPEST, bank * 2 ** (time / doublingTime)) + 0;
}

/** When a growing bank is the steepest; Infinity for no bank. */
export function timeToSteepest(bank: number, doublingTime: number): number {
  return doublingTime * Math.log2(STEEPEST / bank);
}
