declare const unit: unique symbol;

/** A number that knows its unit: bare numbers flow in, feet never pass for knots. */
export type Quantity<U extends string> = number & { readonly [unit]?: U };

export type Knots = Quantity<"kt">;
export type Feet = Quantity<"ft">;
export type NauticalMiles = Quantity<"NM">;
export type Degrees = Quantity<"deg">;
export type DegreesPerSecond = Quantity<"deg/s">;
export type FeetPerMinute = Quantity<"ft/min">;
export type FeetPerMile = Quantity<"ft/NM">;
export type KnotsPerSecond = Quantity<"kt/s">;
export type Seconds = Quantity<"s">;
export type Minutes = Quantity<"min">;
export type Hectopascals = Quantity<"hPa">;
export type Celsius = Quantity<"degC">;
export type LoadFactor = Quantity<"g">;
export type KilogramsPerCubicMetre = Quantity<"kg/m3">;
/** A pure number: a ratio, a fraction, a Mach number. */
export type Plain = Quantity<"plain">;
