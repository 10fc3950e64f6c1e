import type { Row } from "../workings.ts";

/** What is made of a reply. */
export interface Verdict {
  /** 'close' is the answer rounded further than the question allows; 'unreadable' is not counted as a reply. */
  readonly kind: "right" | "slip" | "close" | "wrong" | "unreadable";
  /** Inline Markdown, holes filled; what the student typed stands in it only as a number read and printed anew. */
  readonly say: string;
  /** The exercise's reason, holes filled; '' where it gives none or the reply couldn't be read. */
  readonly why: string;
  /** The way to the answer with the question's numbers; after a slip, the reader's own way last. */
  readonly working: readonly Row[];
  /** The sentences that `say` is made of: 'slip:0' (by its place in the exercise), or keys of options; none where it is our own. */
  readonly because: readonly string[];
  /** The place of the slip among the exercise's; for a choice, of the wrong option. */
  readonly slip?: number;
  /** The number that was read, in the exercise's unit. */
  readonly reply?: number;
}

/** A string for a number; keys, in a list or separated by commas, for a choice and an order. */
export type Reply = string | readonly string[];

export const unreadable = (say: string): Verdict => ({ kind: "unreadable", say, why: "", working: [], because: [] });
