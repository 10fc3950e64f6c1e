import type { Limits } from "./limits.ts";

/** Limits that several topics share: generous for anything slower than sound, and finite. */
export const TRUE_AIRSPEED: Limits = { quantity: "true airspeed", unit: "kt", from: 0, to: 700, openFrom: true };
export const GROUND_SPEED: Limits = { quantity: "ground speed", unit: "kt", from: 0, to: 1000 };
export const BANK: Limits = { quantity: "bank", unit: "deg", from: -90, to: 90, openFrom: true, openTo: true };
export const ROLL_RATE: Limits = { quantity: "roll rate", unit: "deg/s", from: 0, to: 360, openFrom: true };
export const REACTION: Limits = { quantity: "reaction time", unit: "s", from: 0, to: 60 };
export const HEADING: Limits = { quantity: "heading", unit: "deg", from: -100_000, to: 100_000 };
export const HEADING_CHANGE: Limits = { ...HEADING, quantity: "heading change" };
export const VERTICAL_SPEED: Limits = { quantity: "vertical speed", unit: "ft/min", from: -30_000, to: 30_000 };
export const ALTITUDE: Limits = { quantity: "altitude", unit: "ft", from: -16_000, to: 100_000 };
export const PRESSURE_ALTITUDE: Limits = { quantity: "pressure altitude", unit: "ft", from: -16_000, to: 65_000 };
export const HEIGHT: Limits = { quantity: "height", unit: "ft", from: 0, to: 65_000 };
export const TEMPERATURE: Limits = { quantity: "temperature", unit: "degC", from: -100, to: 80 };
export const QNH: Limits = { quantity: "QNH", unit: "hPa", from: 800, to: 1100 };
