import { type Limits, within } from "./limits.ts";
import type { Celsius, Feet, Hectopascals, KilogramsPerCubicMetre } from "./quantity.ts";
import { ALTITUDE, PRESSURE_ALTITUDE, QNH, TEMPERATURE } from "./ranges.ts";
import { feet, G, metres, ZERO_CELSIUS } from "./si.ts";

/** Gas constant of dry air, J/(kg K). @source U.S. Standard Atmosphere 1976: R* / M₀ */
export const GAS_CONSTANT = 8314.32 / 28.9644;
/** Pressure at mean sea level in the standard atmosphere, hPa. @source ICAO Doc 7488 */
export const SEA_LEVEL_PRESSURE = 1013.25;

export const PRESSURE: Limits = { quantity: "pressure", unit: "hPa", from: 10, to: 1770 };
export const FEET_PER_HECTOPASCAL: Limits = {
  quantity: "feet per hectopascal",
  unit: "plain",
  from: 0,
  to: 100,
  openFrom: true,
};

/** A layer in which temperature is linear in geopotential altitude: base in m, K and hPa, gradient in K/m. */
interface Layer {
  readonly base: number;
  readonly temperature: number;
  readonly pressure: number;
  readonly gradient: number;
}

const layers = stack([
  { base: 0, gradient: -0.0065 },
  { base: 11000, gradient: 0 },
  { base: 20000, gradient: 0.001 },
]);

/**
 * Temperature in the standard atmosphere.
 *
 * @param altitude geopotential, −16,000 to 100,000 ft
 * @throws {OutOfRange} outside those limits
 * @source ICAO Doc 7488: layers from −5 to 11, 20 and 32 km
 */
export function isaTemperature(altitude: Feet): Celsius {
  return temperatureAt(metres(within(ALTITUDE, altitude))) - ZERO_CELSIUS;
}

/**
 * Pressure in the standard atmosphere: hydrostatic balance of a perfect gas, integrated over each layer.
 *
 * @param altitude geopotential, −16,000 to 100,000 ft
 * @throws {OutOfRange} outside those limits
 * @source ICAO Doc 7488; U.S. Standard Atmosphere 1976
 */
export function isaPressure(altitude: Feet): Hectopascals {
  return pressureAt(metres(within(ALTITUDE, altitude)));
}

/**
 * Density in the standard atmosphere.
 *
 * @param altitude geopotential, −16,000 to 100,000 ft
 * @returns kg/m³
 * @throws {OutOfRange} outside those limits
 * @source perfect gas: ρ = p / (R T)
 */
export function isaDensity(altitude: Feet): KilogramsPerCubicMetre {
  const H = metres(within(ALTITUDE, altitude));
  return density(pressureAt(H), temperatureAt(H));
}

/**
 * Altitude at which the standard atmosphere has a given pressure: what an altimeter shows with 1013.25 hPa set.
 *
 * @param pressure 10 to 1770 hPa
 * @throws {OutOfRange} outside those limits
 * @source the inverse of `isaPressure`
 */
export function isaAltitude(pressure: Hectopascals): Feet {
  within(PRESSURE, pressure);
  const layer = layers.findLast(({ pressure: base }) => pressure <= base) ?? layers[0]!;
  return feet(layer.base + climbTo(pressure / layer.pressure, layer, 0));
}

/**
 * Pressure altitude from altitude on QNH, exact for an altimeter whose sub-scale moves the pointer in equal steps of
 * standard altitude.
 *
 * @param altitude −16,000 to 100,000 ft
 * @param qnh 800 to 1100 hPa
 * @throws {OutOfRange} outside those limits
 */
export function pressureAltitude(altitude: Feet, qnh: Hectopascals): Feet {
  within(ALTITUDE, altitude);
  return altitude + isaAltitude(within(QNH, qnh));
}

/**
 * Rule of thumb: the difference from 1013, times feet for each hectopascal.
 *
 * @param altitude −16,000 to 100,000 ft
 * @param qnh 800 to 1100 hPa
 * @param feetPerHectopascal over 0, at most 100
 * @throws {OutOfRange} outside those limits
 */
export function pressureAltitudeByRule(altitude: Feet, qnh: Hectopascals, feetPerHectopascal = 30): Feet {
  within(ALTITUDE, altitude);
  within(QNH, qnh);
  within(FEET_PER_HECTOPASCAL, feetPerHectopascal);
  return altitude + (1013 - qnh) * feetPerHectopascal;
}

/**
 * Altitude at which the standard atmosphere is as dense as this dry air.
 *
 * @param pressureAltitude −16,000 to 65,000 ft
 * @param temperature −100 to 80 °C, of the air
 * @throws {OutOfRange} outside those limits
 * @source perfect gas; the inverse of `isaDensity`
 */
export function densityAltitude(pressureAltitude: Feet, temperature: Celsius): Feet {
  within(PRESSURE_ALTITUDE, pressureAltitude);
  within(TEMPERATURE, temperature);
  const ρ = density(pressureAt(metres(pressureAltitude)), temperature + ZERO_CELSIUS);
  const baseDensity = (layer: Layer) => density(layer.pressure, layer.temperature);
  const layer = layers.findLast((candidate) => ρ <= baseDensity(candidate)) ?? layers[0]!;
  return feet(layer.base + climbTo(ρ / baseDensity(layer), layer, 1));
}

/**
 * Feet of altitude for a change of one hectopascal, in the standard atmosphere: R T / (g p).
 *
 * @param pressureAltitude −16,000 to 65,000 ft
 * @throws {OutOfRange} outside those limits
 * @source hydrostatic balance
 */
export function feetPerHectopascal(pressureAltitude: Feet): number {
  const H = metres(within(PRESSURE_ALTITUDE, pressureAltitude));
  return feet((GAS_CONSTANT * temperatureAt(H)) / (G * pressureAt(H)));
}

function stack(given: readonly { base: number; gradient: number }[]): readonly Layer[] {
  const built: Layer[] = [];
  for (const { base, gradient } of given) {
    const below = built.at(-1);
    const temperature = below ? below.temperature + below.gradient * (base - below.base) : 288.15;
    built.push({ base, gradient, temperature, pressure: below ? pressureIn(below, base) : SEA_LEVEL_PRESSURE });
  }
  return built;
}

function layerAt(H: number): Layer {
  return layers.findLast(({ base }) => H >= base) ?? layers[0]!;
}

function temperatureAt(H: number): number {
  const { base, temperature, gradient } = layerAt(H);
  return temperature + gradient * (H - base);
}

function pressureAt(H: number): number {
  return pressureIn(layerAt(H), H);
}

function pressureIn({ base, temperature, pressure, gradient }: Layer, H: number): number {
  if (gradient === 0) return pressure * Math.exp((-G * (H - base)) / (GAS_CONSTANT * temperature));
  return pressure * (1 + (gradient * (H - base)) / temperature) ** (-G / (GAS_CONSTANT * gradient));
}

/** Metres above a layer's base at which pressure (`power` 0) or density (`power` 1) has a ratio to the base's. */
function climbTo(ratio: number, { temperature, gradient }: Layer, power: 0 | 1): number {
  if (gradient === 0) return (-GAS_CONSTANT * temperature * Math.log(ratio)) / G;
  const exponent = -G / (GAS_CONSTANT * gradient) - power;
  return (temperature / gradient) * (ratio ** (1 / exponent) - 1);
}

function density(hectopascals: number, kelvin: number): number {
  return (hectopascals * 100) / (GAS_CONSTANT * kelvin);
}
