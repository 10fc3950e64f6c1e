/** A part of the school's form; what is in it belongs together on the page and in the file. */
export type Section =
  | "names"
  | "speeds"
  | "limits"
  | "phases"
  | "drives"
  | "place"
  | "leads"
  | "recovery"
  | "phrases"
  | "orders"
  | "words";

interface Common {
  /** 'aircraft.stall': the group and the fact's name. */
  readonly id: string;
  /** Where it stands in the file: ['aircraft', 'numbers', 'stall']. */
  readonly path: readonly string[];
  readonly section: Section;
  /** Capital first. */
  readonly label: string;
  /** What it is exactly, in a few words. */
  readonly note?: string;
  /** Among the ten that matter most. */
  readonly main?: true;
  /** The file and the form may leave it out. */
  readonly optional?: true;
}

export interface NumberField extends Common {
  readonly kind: "number";
  /** A unit of `convert`, or 'plain'. */
  readonly unit: string;
  readonly from: number;
  readonly to: number;
}

export interface ChoiceField extends Common {
  readonly kind: "choice";
  /** Value → its words on the page. */
  readonly choices: Readonly<Record<string, string>>;
}

export interface TextField extends Common {
  readonly kind: "text";
  readonly longest: number;
}

/** Steps in their order, one to a line. */
export interface ListField extends Common {
  readonly kind: "list";
}

/** One entry of the school's form. */
export type Field = NumberField | ChoiceField | TextField | ListField;

/** What a field may hold once it is read. */
export type FieldValue = number | string | readonly string[];

/** Something about an entry that can't stand: at which field, what, and what would mend it. */
export interface Finding {
  readonly field: string;
  /** The other fields that it is about. */
  readonly also?: readonly string[];
  readonly message: string;
  readonly mend: string;
}
