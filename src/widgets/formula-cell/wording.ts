import type { Argument, Formula } from "../../calc/index.ts";
import { unitSign } from "../../cells/printed.ts";

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** A name of several words written as one: 'groundSpeed' is 'ground speed'. */
export const spaced = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** What each argument is, told apart by its number where several are the same thing: 'bank 1', 'bank 2'. */
export function labelsOf({ args }: Formula): string[] {
  return args.map(({ name, words }) => {
    const several = args.filter((other) => other.words === words).length > 1;
    return several ? `${words} ${/\d*$/.exec(name)![0]}`.trim() : words;
  });
}

/** The words an argument or a result may be, in a row: 'left or right'. */
export const choiceWords = (options: readonly string[]): string =>
  options
    .map(optionWords)
    .join(", ")
    .replace(/, ([^,]*)$/, " or $1");

/** 'vertical-force' as it is read: 'vertical force'. */
export const optionWords = (option: string): string => option.replaceAll("-", " ");

/** Whether an argument is chosen out of a list of words. */
export const isChoice = (
  argument: Argument,
): argument is Argument & { readonly options: readonly string[]; readonly example: string } =>
  argument.options !== undefined;

/** A text of a number with its unit; no space before a degree sign that stands alone. */
export function withUnit(number: string, unit: string): string {
  const sign = unitSign(unit);
  return sign === "" || sign === "°" ? number + sign : `${number}\u00a0${sign}`;
}
