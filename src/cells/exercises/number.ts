import { namesIn, parseExpression } from "../expressions/index.ts";
import { printed } from "../printed.ts";
import { type Row, workingOf } from "../workings.ts";
import { distance, meets, tolerance } from "./closeness.ts";
import type { Computed, NumberExercise } from "./exercise.ts";
import { fill } from "./fill.ts";
import type { NumberQuestion, NumberSlip } from "./question.ts";
import { type Reading, readReply } from "./reply.ts";
import { scopeOf } from "./scope.ts";
import { decimalsOf } from "./seed.ts";
import { unreadable, type Verdict } from "./verdict.ts";

/** A reply to a question for a number. In this order: right, slip, close, wrong. */
export function markNumber(question: NumberQuestion, reply: string): Verdict {
  const { exercise, answer } = question;
  const read = readReply(reply, exercise);
  if ("unreadable" in read) return unreadable(read.unreadable);
  const far = (value: number) => distance(exercise, value, answer);
  const [first, ...others] = read.readings;
  const reading = others.reduce((nearest, each) => (far(each.value) < far(nearest.value) ? each : nearest), first!);
  const reach = tolerance(exercise, answer);
  const found = { reply: reading.value, why: fill(exercise.why, question.printed) };
  if (meets(exercise, reading.value, answer, reach)) return { ...found, ...right(question, reading) };
  const slip = nearestSlip(question, reading.value, reach);
  if (slip) return { ...found, ...slipped(question, reading, slip) };
  return { ...found, ...(isRounded(exercise, reading, answer) ? close(question, reading) : wrong(question, reading)) };
}

type Judged = Omit<Verdict, "why" | "reply">;

function right(question: NumberQuestion, reading: Reading): Judged {
  const [mine, exact] = [typed(question.exercise, reading), question.printed["answer"]!];
  const say = mine === exact ? `${mine} is right.` : `${mine} is right; more exactly it is ${exact}.`;
  return { kind: "right", say, working: workingTo(question), because: [] };
}

function slipped(question: NumberQuestion, reading: Reading, slip: NumberSlip): Judged {
  const say = `You gave ${typed(question.exercise, reading)}. ${slip.say}`;
  const path = workingBy(question, slip.is).at(-1);
  const working = [...workingTo(question), ...(path ? [{ ...path, what: "Your path" }] : [])];
  return { kind: "slip", say, working, because: [`slip:${slip.index}`], slip: slip.index };
}

function close(question: NumberQuestion, reading: Reading): Judged {
  const say = `${typed(question.exercise, reading)} is the answer, rounded too far: give it to within ${margin(question.exercise)}.`;
  return { kind: "close", say, working: workingTo(question), because: [] };
}

function wrong(question: NumberQuestion, reading: Reading): Judged {
  const say = `${typed(question.exercise, reading)} is not within ${margin(question.exercise)} of the answer. The working shows the way.`;
  return { kind: "wrong", say, working: workingTo(question), because: [] };
}

/** Of the wrong paths within tolerance of the reply, the one that it meets best. */
function nearestSlip({ exercise, slips }: NumberQuestion, reply: number, reach: number): NumberSlip | undefined {
  const far = ({ value }: NumberSlip) => distance(exercise, reply, value);
  return slips.filter(({ value }) => meets(exercise, reply, value, reach)).sort((a, b) => far(a) - far(b))[0];
}

/** Whether a reply is the answer rounded to as many figures as were typed, two at least, in the unit they were typed in. */
function isRounded(
  { unit, circle, signIgnored }: NumberExercise,
  { typed, inTyped }: Reading,
  answer: number,
): boolean {
  const compared = { unit, circle, signIgnored };
  return typed.grains.some((grain) => distance(compared, typed.value, inTyped(answer)) <= (grain / 2) * (1 + 1e-9));
}

const workingTo = (question: NumberQuestion): readonly Row[] => workingBy(question, question.exercise.answer);

/** The rows of an expression, after those of the chapter's computed quantities that it rests on. */
function workingBy({ exercise, given }: NumberQuestion, expression: string): readonly Row[] {
  const named = scopeOf(exercise, given);
  const { unit, digits, label, circle } = exercise;
  const before = computedIn(exercise, expression).flatMap((work) =>
    workingOf(work.is, work.unit, work.digits, work.label, named, { circle: work.circle }),
  );
  return [...before, ...workingOf(expression, unit, digits, label, named, { circle })];
}

/** The computed quantities behind an expression, each after those that it rests on itself. */
function computedIn({ work }: NumberExercise, expression: string): readonly Computed[] {
  const found = new Set<Computed>();
  const visit = (text: string): void => {
    for (const name of namesIn(parseExpression(text))) {
      const computed = Object.hasOwn(work, name) ? work[name] : undefined;
      if (!computed || found.has(computed)) continue;
      visit(computed.is);
      found.add(computed);
    }
  };
  visit(expression);
  return [...found];
}

/** The number as it was understood: '1,100 m (0.59 NM)'. */
function typed({ unit, digits, circle }: NumberExercise, { value, typed }: Reading): string {
  const own = printed(typed.value, {
    unit: typed.unit,
    digits: typed.decimals,
    circle: circle && typed.unit === "deg",
  });
  return typed.unit === unit ? own : `${own} (${printed(value, { unit, digits, circle })})`;
}

/** What still counts as right, in words. */
const margin = ({ within }: NumberExercise): string =>
  "percent" in within
    ? `${within.percent} %`
    : printed(within.value, { unit: within.unit, digits: decimalsOf(within.value), circle: false });
