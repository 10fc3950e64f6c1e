import type { AtlasRuleName } from "../../cells/atlas-rules.ts";
import { airRules } from "./air-rules.ts";
import type { AtlasRule } from "./rule.ts";
import { turningRules } from "./turning-rules.ts";
import { verticalRules } from "./vertical-rules.ts";
import { windRules } from "./wind-rules.ts";

/** Every rule of the error atlas. */
export const rules: readonly AtlasRule[] = [...airRules, ...turningRules, ...verticalRules, ...windRules];

const byKey: ReadonlyMap<string, AtlasRule> = new Map(rules.map((rule) => [rule.key, rule]));

/** The rule of a word that chooses one, or nothing where none has it. */
export const ruleNamed = (key: unknown): AtlasRule | undefined => byKey.get(key as AtlasRuleName);
