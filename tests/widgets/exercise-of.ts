import type {
  ChoiceExercise,
  Exercise,
  NumberExercise,
  OrderExercise,
  QuestionOf,
} from "../../src/cells/exercises/index.ts";
import { draw } from "../../src/cells/exercises/index.ts";
import type { BuiltExercise } from "../../src/widgets/exercise-cell/built.ts";
import { exerciseShell } from "../../src/widgets/exercise-cell/shell.ts";

const common = { objective: "TRN-1", values: {}, facts: {}, work: {}, line: 1 };
const tas = { label: "True airspeed", unit: "kt", digits: 0, circle: false };
const bank = { label: "Bank", unit: "deg", digits: 0, circle: false };

export const radius: NumberExercise = {
  ...common,
  id: "radius-1",
  kind: "number",
  ask: "You are established at {tas} TAS and {bank} of bank. What is the radius of the turn?",
  hints: ["Speed squared, over g times the tangent of {bank}.", "In metres a second, then miles."],
  why: "A turn at {tas} needs {answer} each way.",
  draws: [
    { name: "tas", from: 80, to: 160, step: 5 },
    { name: "bank", from: 15, to: 25, step: 5 },
  ],
  measures: { tas, bank },
  label: "Radius",
  answer: "turnRadius(tas, bank)",
  unit: "NM",
  digits: 2,
  circle: false,
  within: { value: 0.03, unit: "NM" },
  signIgnored: false,
  slips: [{ is: "2 * turnRadius(tas, bank)", say: "That is the diameter, the width of the whole circle at {tas}." }],
};

export const sink: ChoiceExercise = {
  ...common,
  id: "sink-1",
  kind: "choice",
  ask: "You roll into {bank} of bank and leave the elevator alone. What does the altimeter do?",
  hints: ["Which part of the lift holds the weight?"],
  why: "",
  draws: [{ name: "bank", from: 10, to: 30, step: 5 }],
  measures: { bank },
  several: false,
  shuffled: true,
  options: [
    { key: "falls", text: "It falls", right: "true", say: "The upright part falls short at {bank}." },
    { key: "stays", text: "It stays", right: "false", say: "Only the upright part holds the weight." },
    { key: "climbs", text: "It climbs at {bank}", right: "false", say: "" },
  ],
};

export const entry: OrderExercise = {
  ...common,
  id: "entry-1",
  kind: "order",
  ask: "Put the entry into a level turn in order.",
  hints: [],
  why: "Set, then check.",
  draws: [],
  measures: {},
  items: [
    { key: "clear", text: "Call the side of the turn clear" },
    { key: "roll", text: "Roll to the bank" },
    { key: "raise", text: "Raise the nose a shade" },
    { key: "check", text: "Read the turn instrument" },
  ],
  answer: ["clear", "roll", "raise", "check"],
  slips: [{ is: ["roll", "clear", "raise", "check"], say: "The turn was clear only after it had begun." }],
};

/** An exercise as a build makes it of Markdown without marks. */
export function builtOf(exercise: Exercise, formulas: Readonly<Record<string, string>> = {}): BuiltExercise {
  const items = exercise.kind === "choice" ? exercise.options : exercise.kind === "order" ? exercise.items : [];
  const says: [string, string][] =
    exercise.kind === "choice"
      ? exercise.options.map(({ key, say }) => [key, say])
      : exercise.slips.map(({ say }, at) => [`slip:${at}`, say]);
  return {
    exercise,
    formulas,
    html: {
      ask: exercise.ask,
      hints: exercise.hints,
      why: exercise.why,
      options: Object.fromEntries(items.map(({ key, text }) => [key, text])),
      say: Object.fromEntries(says),
    },
  };
}

export const first = <E extends Exercise>(exercise: E): QuestionOf<E> => draw(exercise, "first");
export const shellOf = (exercise: Exercise): string => exerciseShell(builtOf(exercise), first(exercise), 1);
