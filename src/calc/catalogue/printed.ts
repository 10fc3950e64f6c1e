/** A number with so many digits after the point; minus is U+2212 and zero has no sign. */
export function fixed(value: number, digits: number): string {
  return typographic(value.toFixed(digits));
}

/** A number with so many significant figures and no exponent. */
export function significant(value: number, figures: number): string {
  if (value === 0 || !Number.isFinite(value)) return typographic(String(value));
  const rounded = Number(value.toPrecision(figures));
  const before = Math.floor(Math.log10(Math.abs(rounded))) + 1;
  return typographic(rounded.toFixed(Math.min(100, Math.max(0, figures - before))));
}

/** A given number as it was given, without the noise of binary fractions. */
export function plain(value: number): string {
  return typographic(String(Number(value.toPrecision(12))));
}

/** The same as a term after another sign: a negative number stands in brackets. */
export function term(text: string): string {
  return text.startsWith("−") ? `(${text})` : text;
}

function typographic(text: string): string {
  return /^-[0.]*$/.test(text) ? text.slice(1) : text.replaceAll("-", "−").replace("Infinity", "∞");
}
