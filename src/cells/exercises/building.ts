import { didYouMean, quoted } from "../reading/near.ts";
import type { Path } from "../reading/yaml.ts";
import { givesDirection, labelOf, readExpression, readSlip } from "./answers.ts";
import { tolerance } from "./closeness.ts";
import type { ChoiceExercise, Common, NumberExercise, OrderExercise, Within } from "./exercise.ts";
import { holesIn } from "./fill.ts";
import type { Names } from "./names.ts";
import type { Report } from "./report.ts";
import { checkTold, sentencesOf } from "./sentences.ts";
import type { Written, WrittenChoice, WrittenNumber, WrittenOrder } from "./shape.ts";
import { isUnit, kindOf } from "./spelling.ts";

/** A number exercise, or nothing where a mistake in it, then reported, leaves it without meaning. */
export function builtNumber(
  written: WrittenNumber,
  names: Names,
  line: number,
  report: Report,
): NumberExercise | undefined {
  const { label, answer, unit, circle, sign, slips } = written;
  const within = isMeasure(unit, report) ? readWithin(written.within, unit, report) : undefined;
  const expression = readExpression(answer, ["answer"], names, report);
  const paths = slips.map(({ is }, at) => readSlip(is, ["slips", at, "is"], names, report));
  const fitting = expression !== undefined && fits(expression.unit, unit, report);
  if (!fitting || !within || paths.includes(undefined)) return undefined;
  checkTold(written, names, [answer], report);
  const { node } = expression;
  return {
    kind: "number",
    ...common(written, names, [answer, ...slips.map(({ is }) => is)], line),
    label: label ?? labelOf(node, names),
    answer,
    unit,
    digits: written.digits ?? 0,
    circle: circle ?? (unit === "deg" && givesDirection(node, names)),
    within,
    signIgnored: sign === "ignored",
    slips,
  };
}

/** A choice, or nothing where it can't be marked. */
export function builtChoice(
  written: WrittenChoice,
  names: Names,
  line: number,
  report: Report,
): ChoiceExercise | undefined {
  const { several, shuffled } = written;
  const options = Object.entries(written.options).map(([key, { text, right, say = "" }]) => ({
    key,
    text,
    right,
    say,
  }));
  if (options.length < 2)
    return report.at(["options"], "a choice has two options at least", "add what else a student may think");
  const rights = options.map(({ key, right }) => {
    const path = ["options", key, "right"];
    const expression = readExpression(right, path, names, report);
    if (!expression || expression.unit === "boolean") return expression;
    return report.at(path, `${quoted(right)} is neither true nor false`, "write true, false or a comparison");
  });
  if (rights.includes(undefined)) return undefined;
  const deciding = options.map(({ right }) => right);
  checkTold(written, names, deciding, report);
  return { kind: "choice", ...common(written, names, deciding, line), several, shuffled, options };
}

/** An order, or nothing where an order it declares isn't one of its items. */
export function builtOrder(
  written: WrittenOrder,
  names: Names,
  line: number,
  report: Report,
): OrderExercise | undefined {
  const { answer, slips } = written;
  const items = Object.entries(written.items).map(([key, text]) => ({ key, text }));
  if (items.length < 2) return report.at(["items"], "an order has two items at least", "add the other steps");
  const keys = items.map(({ key }) => key);
  const orders: [Path, readonly string[]][] = [
    [["answer"], answer],
    ...slips.map(({ is }, at): [Path, string[]] => [["slips", at, "is"], is]),
  ];
  const sound = orders.map(([path, order]) => isOrderOf(keys, order, path, report));
  const repeated = orders.findIndex(([, order], at) =>
    orders.slice(0, at).some(([, other]) => other.join() === order.join()),
  );
  if (repeated > 0) report.at(orders[repeated]![0], "this order stands above already", "write another, or take it out");
  if (sound.includes(false) || repeated > 0) return undefined;
  return { kind: "order", ...common(written, names, [], line), items, answer, slips };
}

function isOrderOf(keys: readonly string[], order: readonly string[], path: Path, report: Report): boolean {
  const strange = order.findIndex((key) => !keys.includes(key));
  const missing = keys.filter((key) => !order.includes(key));
  if (strange >= 0) {
    report.at([...path, strange], `no item has the key ${quoted(order[strange]!)}`, didYouMean(order[strange]!, keys));
  } else if (missing.length > 0)
    report.at(path, `this order lacks ${missing.map(quoted).join(" and ")}`, "give every item one place");
  else if (order.length > keys.length)
    report.at(path, "an item has two places in this order", "give every item one place");
  return strange < 0 && missing.length === 0 && order.length === keys.length;
}

function isMeasure(unit: string, report: Report): boolean {
  if (unit === "plain" || isUnit(unit)) return true;
  report.at(
    ["unit"],
    `${quoted(unit)} is no unit known here`,
    "write a unit such as kt, NM, ft, deg, deg/s or ft/min, or plain",
  );
  return false;
}

/** '0.03 NM', '3 %', or a bare number in the answer's unit. */
function readWithin(text: string, unit: string, report: Report): Within | undefined {
  const [, number = "", stated = ""] = /^(\d+(?:\.\d+)?|\.\d+)\s*(\S*)$/.exec(text) ?? [];
  const wrong = (message: string) =>
    report.at(["within"], message, `write how far off is still right, such as 2 ${unit === "plain" ? "%" : unit}`);
  if (!(Number(number) > 0)) return wrong(`${quoted(text)} is no tolerance`);
  if (stated === "%") return { percent: Number(number) };
  const within = { value: Number(number), unit: stated || unit };
  if (within.unit !== unit && !(isUnit(within.unit) && kindOf(within.unit) === kindOf(unit)))
    return wrong(`${quoted(text)} is no tolerance for an answer in ${unit}`);
  return tolerance({ within, unit }, 0) > 0 ? within : wrong(`${quoted(text)} is no tolerance`);
}

function fits(found: string | undefined, unit: string, report: Report): boolean {
  if (found === undefined || found === unit) return true;
  if (found === "word" || found === "boolean")
    report.at(["answer"], "the answer is not a number", "ask for a number, or write a choice");
  else if (isUnit(found) && kindOf(found) === kindOf(unit)) {
    report.at(
      ["answer"],
      `the answer is in ${found} and unit says ${unit}`,
      `write unit: ${found}, or convert(…, "${found}", "${unit}")`,
    );
  } else
    report.at(
      ["answer"],
      `the answer is in ${found} and unit says ${unit}`,
      `write unit: ${found}, or mend the answer`,
    );
  return false;
}

/** What exercises of all kinds have, with a snapshot of every number they use. */
function common(written: Written, names: Names, expressions: readonly string[], line: number): Common {
  const { id, objective, ask, hints, why = "" } = written;
  const holes = sentencesOf(written).flatMap(({ text }) => holesIn(text).map(({ name }) => name));
  const used = [...new Set([...Object.keys(written.draw), ...names.behind(expressions), ...holes])];
  const snapshot = <T>(of: (name: string) => T | undefined): Record<string, T> =>
    Object.fromEntries(used.flatMap((name) => (of(name) === undefined ? [] : [[name, of(name)!]])));
  return {
    id,
    objective,
    ask,
    hints,
    why,
    draws: names.draws(),
    measures: snapshot((name) => names.measureOf(name)),
    values: snapshot((name) => names.valueOf(name)),
    facts: snapshot((name) => names.factOf(name)),
    work: snapshot((name) => names.workOf(name)),
    line,
  };
}
