import { catalogue } from "../../calc/index.ts";
import { rooms } from "../facts.ts";
import type { Draft } from "./draft.ts";
import { quoted } from "./near.ts";
import type { ReadYaml } from "./yaml.ts";

const formulaNames = new Set(catalogue.map(({ name }) => name));
const ownWords = new Set<string>([...rooms, "answer", "and", "or", "not", "true", "false", "if"]);

/** Whether a quantity may have the name it was given under `part`; reports why not. */
export function isFit(name: string, part: "given" | "work", read: ReadYaml, draft: Draft): boolean {
  const at = read.at([part, name], "key");
  if (!/^[a-z][A-Za-z0-9]{0,39}$/.test(name)) {
    draft.add(
      at,
      `${quoted(name)} is no name for a quantity.`,
      "Use up to forty letters and digits, a small letter first.",
    );
    return false;
  }
  if (!formulaNames.has(name) && !ownWords.has(name)) return true;
  draft.add(at, `'${name}' is the name of something else already.`, "Choose another name.");
  return false;
}
