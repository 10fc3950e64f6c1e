import type { Limits } from "./limits.ts";
import { HEADING } from "./ranges.ts";

/** The way a pattern, or one turn, goes round. */
export type Turns = "left" | "right";
export const TURNS: readonly Turns[] = ["left", "right"];

/** Limits that wind, compass, holding, panel and the integrators share. */
export const WIND_SPEED: Limits = { quantity: "wind speed", unit: "kt", from: 0, to: 300 };
export const TURN_RATE: Limits = { quantity: "rate of turn", unit: "deg/s", from: -60, to: 60 };
/** A turn that must end: its rate, without its sign, is over zero. */
export const SOME_TURN_RATE: Limits = { ...TURN_RATE, from: 0, openFrom: true };
export const TIME: Limits = { quantity: "time", unit: "s", from: 0, to: 100_000 };
export const STEP: Limits = { quantity: "step of integration", unit: "s", from: 0, to: 10, openFrom: true };
export const COURSE: Limits = { ...HEADING, quantity: "course" };
export const WIND_FROM: Limits = { ...HEADING, quantity: "wind direction" };
