import type { written } from "./exercises-sample.ts";

/** A mistake, put into a sample: what it is, in which sample, what it replaces by what, where it is found and in which words. */
export interface Mistake {
  readonly mistake: string;
  readonly name: keyof typeof written;
  readonly from: string;
  readonly to: string;
  readonly at: string;
  readonly message: string;
}

const table = String.raw`
an unknown name in the answer | radius | answer: turnRadius(tas, | answer: turnRadius(tsa, | tsa | nothing is named tsa
an answer of another unit | radius | unit: NM | unit: kt | turnRadius(tas, bank)\nunit | in NM and unit says kt
an answer that needs converting | radius | unit: NM | unit: m | turnRadius(tas, bank)\nunit | in NM and unit says m
an unknown unit | radius | unit: NM | unit: furlong | furlong | 'furlong' is no unit
a condition for an answer | radius | answer: turnRadius(tas, bank) | answer: tas > 90 | tas > 90 | not a number
no answer | radius | answer: turnRadius(tas, bank)\n |  | id: turn-radius | no 'answer'
an unknown key | radius | within: | witihn: | witihn | 'witihn'
a slip's unknown name | radius | is: 2 * turnRadius(tas, bank) | is: 2 * turnRadius(tas, bnak) | bnak | nothing is named bnak
a slip's wrong count | radius | is: 2 * turnRadius(tas, bank) | is: 2 * turnRadius(tas) | turnRadius(tas)\n | takes 2
a mistake in an untaken branch | radius | is: 2 * turnRadius(tas, bank) | is: if(tas > 0, 9, bnak) | bnak | nothing is named bnak
a tolerance of another kind | radius | within: 0.03 NM | within: 3 kt | 3 kt | no tolerance for an answer in NM
a tolerance of nothing | radius | within: 0.03 NM | within: 0 NM | 0 NM | no tolerance
a hole for nothing | radius | of the turn? | at {windSpeed}? | {windSpeed} | {windSpeed} stands for nothing
an answer given away | radius | of the turn? | of {answer}? | {answer}? | {answer} stands for nothing
a computed hole | cruise | How long do | How long, {minutes}, do | {minutes} | {minutes} stands for nothing
an untold number | radius |  and {bank} of bank |  | You are | depends on bank
an unknown objective | radius | TRN-1 | TRN-9 | TRN-9 | no objective 'TRN-9'
an id with a space | radius | id: turn-radius | id: turn radius | turn radius | letters, digits and hyphens
a draw of nothing known | radius |   tas: { |   tass: { | tass | 'tass' shadows no given
a draw of an unknown quantity | radius | step: 5 } | step: 5, quantity: wind } | wind } | no quantity 'wind'
a draw of an unknown unit | radius | step: 5 } | step: 5, unit: mph } | mph } | 'mph' is no unit
a draw beyond its quantity | radius | to: 160 | to: 900 | { from: 80 | outside 40 to 250
a step of 0 | radius | step: 5 | step: 0 | 0 } | step must be over 0
a range upside down | radius | from: 80 | from: 190 | 160 | below 'from'
a list of both kinds | heading | [-12, -8, 8, 12] | [-12, left] | { list | mixes numbers and words
a draw named answer | radius |   tas: { |   answer: { | answer: { from | meaning of its own
a slip on the answer | radius | is: 2 * turnRadius | is: 1.001 * turnRadius | id: turn-radius | tolerance of the answer
two like slips | radius | bank) * 1.852 | bank) * 2.001 | id: turn-radius | tolerance of each other
a slip that leads nowhere | radius | is: 2 * turnRadius(tas, bank) | is: turnRadius(0 - tas, bank) | turnRadius(0 | leads nowhere
an answer out of range | radius | answer: turnRadius(tas, bank) | answer: turnRadius(-tas, bank) | id: turn-radius | must be over 0
an option neither right nor wrong | faster | right: turnRate(tas, bank) > 3 | right: turnRate(tas, bank) | turnRate(tas, bank)\n | neither true nor false
two right options where one is wanted | several | several: true\n |  | id: what-matters | several options are right
no right option | several | right: true\n  bank:\n    text: Bank\n    right: true | say: No.\n  bank: Bank | id: what-matters | no option is right
a key that is no item | recovery | answer: [power, bank, pitch] | answer: [power, bnak, pitch] | bnak | no item has the key 'bnak'
an item without place | recovery | answer: [power, bank, pitch] | answer: [power, bank] | [power, bank] | lacks 'pitch'
an item twice | recovery | answer: [power, bank, pitch] | answer: [power, bank, pitch, bank] | [power, bank, pitch, bank] | two places
a slip that is the answer | recovery | is: [power, pitch, bank] | is: [power, bank, pitch] | [power, bank, pitch]\n    say | stands above already
`;

/** One mistake a line, its parts apart by bars, a new line written as \\n. */
export const mistakes: readonly Mistake[] = table
  .trim()
  .split("\n")
  .map((line) => {
    const [mistake, name, from, to, at, message] = line.split(" | ").map((part) => part.replaceAll("\\n", "\n"));
    return { mistake, name, from, to, at, message: message?.toLowerCase() } as Mistake;
  });
