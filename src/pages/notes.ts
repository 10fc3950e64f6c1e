import { givenWith } from "../cells/school/own-given.ts";
import { Worksheet } from "../cells/worksheet.ts";
import type { BuiltSheet } from "../widgets/built-sheet.ts";
import { bindLiveValues } from "../widgets/live-binding.ts";
import { bindWhose, ownSchool, shown } from "./school.ts";
import { bindShade } from "./shade.ts";

const sheet: Omit<BuiltSheet, "exercises"> = JSON.parse(document.getElementById("sheet")!.textContent);
let unbind = (): void => {};

bindShade();
bindWhose(sheet, follow);

/** The values in the notes are those of the school, as in the chapter. */
function follow(): void {
  const own = ownSchool(sheet);
  const { aircraft, place, technique } = own ?? sheet;
  const given = own ? givenWith(sheet.given, own) : sheet.given;
  const schedule = (run: () => void): void => void requestAnimationFrame(run);
  unbind();
  unbind = bindLiveValues(
    document.body,
    new Worksheet({ given, work: sheet.work }, { aircraft, place, technique, schedule }),
  );
  shown(own);
}
