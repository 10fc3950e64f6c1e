import { OutOfRange } from "../../calc/index.ts";
import { evaluate, parseExpression, type Value } from "../expressions/index.ts";
import { printed } from "../printed.ts";
import { collides, tolerance } from "./closeness.ts";
import type { ChoiceExercise, Exercise, NumberExercise, OrderExercise } from "./exercise.ts";
import { fill } from "./fill.ts";
import type {
  ChoiceQuestion,
  Given,
  NumberQuestion,
  NumberSlip,
  OrderQuestion,
  Question,
  QuestionOf,
  Settings,
} from "./question.ts";
import { givenOf, scopeOf, shown } from "./scope.ts";
import { pick, shuffled, streamOf } from "./seed.ts";

/** Numbers are drawn so often before an exercise is given up. */
export const ATTEMPTS = 100;

/** An exercise that no draw can make a question of. */
export class DrawProblem extends Error {
  /** The exercise's id. */
  readonly exercise: string;
  /** What was wrong with the last numbers drawn, as the end of a sentence. */
  readonly reason: string;

  constructor(exercise: string, reason: string) {
    super(`${exercise} has no usable numbers: ${reason}`);
    this.name = "DrawProblem";
    this.exercise = exercise;
    this.reason = reason;
  }
}

/**
 * An exercise with fresh numbers. The same exercise, seed and settings give the same question on every machine.
 * Numbers are drawn again where the answer is null or out of range, or where a wrong path leads within tolerance of
 * the answer or of another wrong path.
 *
 * @param afford asked before each attempt; where it says no, the drawing ends as after a hundred failures
 * @throws {DrawProblem} after a hundred failures in a row
 */
export function draw<E extends Exercise>(
  exercise: E,
  seed: string,
  settings: Settings = {},
  afford: () => boolean = () => true,
): QuestionOf<E> {
  const stream = streamOf(seed, exercise.id);
  let reason = "";
  for (let attempt = 0; attempt < ATTEMPTS && afford(); attempt++) {
    const drawn = Object.fromEntries(exercise.draws.map((each) => [each.name, pick(stream, each)]));
    const question = attempted(exercise, seed, drawn, settings);
    if (typeof question !== "string") return question as QuestionOf<E>;
    reason = question;
  }
  throw new DrawProblem(exercise.id, reason);
}

/**
 * The question that an exercise makes of known numbers: those of an answer sheet, which is never drawn again.
 *
 * @param given values by name; what is left out comes from the settings or from the exercise as read
 * @throws {DrawProblem} where there is no answer with these numbers
 */
export function pose<E extends Exercise>(
  exercise: E,
  seed: string,
  given: Given,
  settings: Settings = {},
): QuestionOf<E> {
  const question = posed(exercise, seed, given, settings);
  if (typeof question === "string") throw new DrawProblem(exercise.id, question);
  return question as QuestionOf<E>;
}

/** A question, or what is wrong with these numbers. */
function attempted(exercise: Exercise, seed: string, drawn: Given, settings: Settings): Question | string {
  const question = posed(exercise, seed, drawn, settings);
  if (typeof question === "string" || question.kind !== "number") return question;
  return collisionIn(question) ?? question;
}

function posed(exercise: Exercise, seed: string, drawn: Given, settings: Settings): Question | string {
  const given = givenOf(exercise, drawn, settings);
  const texts = Object.fromEntries(
    Object.entries(given).map(([name, value]) => [name, shown(value, exercise.measures[name]!)]),
  );
  const common = { seed, given, printed: texts, ask: fill(exercise.ask, texts) };
  if (exercise.kind === "number") return numberQuestion(exercise, common);
  if (exercise.kind === "choice") return choiceQuestion(exercise, common);
  return orderQuestion(exercise, common);
}

type Shared = Pick<Question, "seed" | "given" | "printed" | "ask">;

function numberQuestion(exercise: NumberExercise, common: Shared): NumberQuestion | string {
  const answer = numberOf(exercise, exercise.answer, common.given);
  if (typeof answer === "string") return answer;
  const texts = { ...common.printed, answer: printed(answer, exercise) };
  const slips: NumberSlip[] = exercise.slips.flatMap(({ is, say }, index) => {
    const value = numberOf(exercise, is, common.given);
    return typeof value === "number" ? [{ value, say: fill(say, texts), is, index }] : [];
  });
  return { kind: "number", exercise, ...common, printed: texts, answer, slips };
}

/** What an expression comes to, or what keeps it from coming to a number. */
function numberOf(exercise: NumberExercise, expression: string, given: Given): number | string {
  const value = resultOf(exercise, expression, given);
  if (value === null) return "there is no solution";
  if (value instanceof OutOfRange) return value.message;
  if (typeof value !== "number" || !Number.isFinite(value)) return `${expression} is not a finite number`;
  return exercise.circle ? ((value % 360) + 360) % 360 : value;
}

function resultOf(exercise: Exercise, expression: string, given: Given): Value | OutOfRange {
  try {
    return evaluate(parseExpression(expression), scopeOf(exercise, given));
  } catch (error) {
    if (error instanceof OutOfRange) return error;
    throw error;
  }
}

/** Which two of a question's values can't be told apart, or undefined where all can. */
function collisionIn({ exercise, answer, slips }: NumberQuestion): string | undefined {
  const reach = tolerance(exercise, answer);
  if (!(reach > 0)) return "the answer is 0, of which no percentage is wide";
  for (const [at, slip] of slips.entries()) {
    if (collides(exercise, slip.value, answer, reach))
      return `the slip ${slip.is} falls within tolerance of the answer`;
    const other = slips.slice(0, at).find(({ value }) => collides(exercise, slip.value, value, reach));
    if (other) return `the slips ${other.is} and ${slip.is} fall within tolerance of each other`;
  }
  return undefined;
}

function choiceQuestion(exercise: ChoiceExercise, common: Shared): ChoiceQuestion | string {
  const values = exercise.options.map(({ right }) => resultOf(exercise, right, common.given));
  const unknown = values.find((value) => typeof value !== "boolean");
  if (unknown !== undefined)
    return unknown instanceof OutOfRange ? unknown.message : "an option is neither right nor wrong";
  const answer = exercise.options.filter((_, at) => values[at]).map(({ key }) => key);
  if (answer.length === 0) return "no option is right";
  if (answer.length > 1 && !exercise.several) return "several options are right where one is wanted";
  const slips = exercise.options
    .filter(({ key, say }) => say !== "" && !answer.includes(key))
    .map(({ key, say }) => ({ value: [key], say: fill(say, common.printed) }));
  const keys = exercise.options.map(({ key }) => key);
  const options = exercise.shuffled ? shuffled(orderStream(exercise, common), keys) : keys;
  return { kind: "choice", exercise, ...common, answer, slips, options };
}

function orderQuestion(exercise: OrderExercise, common: Shared): OrderQuestion {
  const stream = orderStream(exercise, common);
  const keys = exercise.items.map(({ key }) => key);
  let options = shuffled(stream, keys);
  // Shown in the right order, the question would answer itself.
  while (options.length > 1 && options.every((key, at) => key === exercise.answer[at]))
    options = shuffled(stream, keys);
  const slips = exercise.slips.map(({ is, say }) => ({ value: is, say: fill(say, common.printed) }));
  return { kind: "order", exercise, ...common, answer: exercise.answer, slips, options };
}

/** Apart from the numbers' stream: another aircraft may have numbers drawn again, and the order stays. */
const orderStream = (exercise: Exercise, { seed }: Shared) => streamOf(seed, exercise.id, "order");
