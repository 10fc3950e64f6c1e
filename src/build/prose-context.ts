import { builtIn } from "../cells/course.ts";
import { escapeHtml, inlineHtml, inlineTokens, type ProseContext, termForms } from "../cells/prose.ts";
import type { Course } from "./chapters-folder.ts";
import { typeset } from "./typeset.ts";

/** How prose is set on a page that stands `root` away from the site's first page. */
export function proseContext(
  { terms }: Pick<Course, "terms">,
  root: string,
  live = (name: string) => `{${name}}`,
): ProseContext {
  return {
    typeset,
    live,
    term(key, text) {
      const term = terms.find((one) => one.key === key);
      if (!term) return escapeHtml(text);
      const { british, american } = termForms(term, text);
      const words =
        british === american
          ? escapeHtml(british)
          : `<span class="british">${escapeHtml(british)}</span><span class="american">${escapeHtml(american)}</span>`;
      return `<a class="term" href="${root}glossary.html#${key}">${words}</a>`;
    },
    link: (href) =>
      href.replace(/^([a-z-]+)\.md(#.*)?$/, (_, name, hash = "") => `${root}chapters/${name}.html${hash}`),
  };
}

const nowhere = () => ({ line: 1, column: 1 });

/** One sentence of inline Markdown, checked when its chapter was read, as HTML. */
export const sentenceHtml = (markdown: string, prose: ProseContext): string =>
  inlineHtml(inlineTokens(markdown, { file: "", place: nowhere, known: builtIn }).tokens, prose);
