import { bindWhose } from "./school.ts";
import { changeSettings, readSettings } from "./settings.ts";
import { bindShade } from "./shade.ts";

bindShade();
bindWhose();

for (const choice of document.querySelectorAll<HTMLInputElement>('input[name="words"]')) {
  choice.checked = choice.value === (readSettings().words ?? "british");
  choice.addEventListener("change", () =>
    changeSettings({ words: choice.value === "american" ? "american" : "british" }),
  );
}
