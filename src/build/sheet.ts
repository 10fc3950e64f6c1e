import type { Chapter } from "../cells/chapter.ts";
import type { Known } from "../cells/known.ts";
import { Worksheet } from "../cells/worksheet.ts";
import type { BuiltExercise } from "../widgets/shells.ts";

/** What a chapter's page carries for its script. */
export interface BuiltSheet {
  readonly chapter: { readonly name: string; readonly title: string };
  readonly given: Chapter["given"];
  readonly work: Chapter["work"];
  readonly aircraft: Known["aircraft"];
  readonly place: Known["place"];
  readonly exercises: readonly BuiltExercise[];
}

/** The chapter's quantities at their defaults, as the built page prints them. */
export const worksheetOf = ({ given, work }: Chapter, { aircraft, place }: Known): Worksheet =>
  new Worksheet({ given, work }, { aircraft, place });
