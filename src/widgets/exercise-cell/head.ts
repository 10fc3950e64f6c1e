const ordinals = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];
const counts = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

/**
 * What has been replied and helped so far: 'first reply, no hints', 'second reply, two hints used'.
 *
 * @param nth replies marked, 0 before the first
 */
export function headWords(nth: number, hints: number): string {
  const helped = `${counts[hints] ?? hints} ${hints === 1 ? "hint" : "hints"}${hints > 0 ? " used" : ""}`;
  if (nth === 0) return hints === 0 ? "" : helped;
  return `${ordinals[nth - 1] ?? `${nth}th`} reply, ${helped}`;
}
