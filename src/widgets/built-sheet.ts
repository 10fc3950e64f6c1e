import type { Given, Work } from "../cells/chapter.ts";
import type { Facts } from "../cells/known.ts";
import type { BuiltExercise } from "./shells.ts";

/** What a chapter's page carries for its script, as JSON. */
export interface BuiltSheet {
  readonly chapter: { readonly name: string; readonly title: string };
  readonly given: readonly Given[];
  readonly work: readonly Work[];
  readonly aircraft: Facts;
  readonly place: Facts;
  readonly technique: Facts;
  readonly exercises: readonly BuiltExercise[];
}
