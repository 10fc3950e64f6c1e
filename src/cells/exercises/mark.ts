import { markKeys } from "./keys.ts";
import { markNumber } from "./number.ts";
import type { Question } from "./question.ts";
import type { Reply, Verdict } from "./verdict.ts";

export type { Reply, Verdict } from "./verdict.ts";

/** What is made of a reply to a question. Never throws, whatever was typed. */
export function mark(question: Question, reply: Reply): Verdict {
  if (question.kind === "number") return markNumber(question, typeof reply === "string" ? reply : reply.join(" "));
  const keys = typeof reply === "string" ? reply.split(",").map((key) => key.trim()) : reply;
  return markKeys(question, keys.length === 1 && keys[0] === "" ? [] : keys);
}
