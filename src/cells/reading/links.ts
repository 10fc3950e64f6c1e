import type { Tokens } from "marked";
import type { Term } from "../known.ts";
import type { Position } from "../problem.ts";
import { sameForm, termFormsOf } from "../terms.ts";
import type { ProseScope } from "./inline.ts";
import { didYouMean, quoted } from "./near.ts";

interface Words {
  readonly message: string;
  readonly mend: string;
}

/** What is wrong with a link: it may lead to a secure address, a chapter or a glossary term. */
export function linkMistake(link: Tokens.Link, scope: ProseScope, position: Position): Words | undefined {
  const { href, title } = link;
  if (title)
    return { message: "A link's title is shown to nobody.", mend: "Leave the words in quotes out of the brackets." };
  if (/[{}]/.test(href)) return { message: "A live value can't stand in an address.", mend: "Write the address out." };
  if (href.startsWith("term:")) return termMistake(href.slice(5), link, scope);
  if (/^https:\/\/[^\s"'<>\\]+$/.test(href)) return undefined;
  const chapter = /^([a-z][a-z0-9-]*)\.md(?:#([^\s#]+))?$/.exec(href);
  if (!chapter)
    return {
      message: `A link can't lead to ${quoted(href)}.`,
      mend: "Write an address that starts with https:, a chapter's file (turning.md or turning.md#section), or term:key.",
    };
  const [, name = "", section] = chapter;
  if (section) scope.onAnchor?.(name, section, position);
  if (scope.known.chapters.includes(name)) return undefined;
  return { message: `There is no chapter ${quoted(`${name}.md`)}.`, mend: didYouMean(name, scope.known.chapters) };
}

function termMistake(key: string, { text }: Tokens.Link, { known }: ProseScope): Words | undefined {
  const term = known.terms.find((each) => each.key === key);
  if (!term) {
    const keys = known.terms.map((each) => each.key);
    return { message: `The glossary has no term ${quoted(key)}.`, mend: didYouMean(key, keys) };
  }
  if (!differs(term) || termFormsOf(term).some((pair) => pair.some((form) => sameForm(form, text)))) return undefined;
  return {
    message: `${quoted(text)} is none of the glossary's forms of '${key}', so it couldn't be shown in the reader's regional word.`,
    mend: `Give the glossary that form, or write one of: ${termFormsOf(term)
      .map(([british]) => british)
      .join(", ")}.`,
  };
}

const differs = (term: Term): boolean => termFormsOf(term).some(([british, american]) => british !== american);
