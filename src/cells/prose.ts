import type { Token, Tokens } from "marked";
import { escapeHtml } from "./escape-html.ts";
import type { NoteToken } from "./reading/notes.ts";

export { escapeHtml } from "./escape-html.ts";
export { plainText } from "./plain-text.ts";
export { readInline as inlineTokens } from "./reading/inline.ts";
export { termForms } from "./terms.ts";

/** How what a reader touches in prose is set. */
export interface ProseContext {
  /** HTML of a formula. */
  typeset(tex: string, display: boolean): string;
  /** HTML of a live value. */
  live(name: string): string;
  /** HTML of a glossary term, given what the author wrote. */
  term(key: string, text: string): string;
  /** The address that a link of a chapter leads to. */
  link(href: string): string;
}

/** Block tokens as HTML. Everything an author wrote is escaped; raw HTML shows as the text it is. */
export const proseHtml = (tokens: readonly Token[], context: ProseContext): string =>
  tokens
    .map((token) => blockHtml(token, context))
    .filter(Boolean)
    .join("\n");

/** Inline tokens as HTML. */
export const inlineHtml = (tokens: readonly Token[], context: ProseContext): string =>
  tokens.map((token) => spanHtml(token, context)).join("");

/** The side notes that these tokens refer to, in the order of their sentences. */
export function notesIn(tokens: readonly Token[]): Pick<NoteToken, "number" | "tokens">[] {
  return tokens.flatMap((token) => {
    if (token.type === "note") return [token as unknown as NoteToken];
    return notesIn(beneath(token));
  });
}

function beneath(token: Token): readonly Token[] {
  if (token.type === "list") return (token as Tokens.List).items;
  if (token.type !== "table") return (token as Tokens.Generic).tokens ?? [];
  const { header, rows } = token as Tokens.Table;
  return [header, ...rows].flat().flatMap((cell) => cell.tokens);
}

function blockHtml(token: Token, context: ProseContext): string {
  switch (token.type) {
    case "paragraph":
      return `<p>${inlineHtml(token.tokens ?? [], context)}</p>`;
    case "heading": {
      const level = Math.min(Math.max(Number(token.depth), 3), 6);
      return `<h${level}>${inlineHtml(token.tokens ?? [], context)}</h${level}>`;
    }
    case "list":
      return list(token as Tokens.List, context);
    case "blockquote":
      return `<blockquote>${proseHtml(token.tokens ?? [], context)}</blockquote>`;
    case "table":
      return table(token as Tokens.Table, context);
    case "code":
      return `<pre><code>${escapeHtml(token.text)}</code></pre>`;
    case "math":
      return `<div class="math">${context.typeset(token.tex, token.display)}</div>`;
    case "hr":
      return "<hr>";
    case "space":
    case "def":
      return "";
    default:
      return spanHtml(token, context);
  }
}

function spanHtml(token: Token, context: ProseContext): string {
  const inside = () => inlineHtml((token as Tokens.Generic).tokens ?? [], context);
  switch (token.type) {
    case "strong":
    case "em":
      return `<${token.type}>${inside()}</${token.type}>`;
    case "codespan":
      return `<code>${escapeHtml(token.text)}</code>`;
    case "br":
      return "<br>";
    case "link":
      return linkHtml(token as Tokens.Link, inside(), context);
    case "live":
      return context.live(token.name);
    case "term":
      return context.term(token.key, token.text);
    case "math":
      return context.typeset(token.tex, token.display);
    case "note":
      return `<sup>${Number(token.number)}</sup>`;
    default: {
      const { tokens, text, raw } = token as Tokens.Generic;
      return tokens ? inside() : escapeHtml(joined(token.type === "text" ? raw : String(text ?? raw)));
    }
  }
}

/** A number keeps its unit beside it: no line ends between the two. */
const joined = (text: string): string =>
  text.replace(/(\d) (?=(?:kt|ft|NM|hPa|min|°C|m\/s|ft\/min|per cent|[gms])(?![\p{L}\d]))/gu, "$1\u00a0");

/** A link; an address that a chapter may not lead to gives its words alone. */
function linkHtml({ href }: Tokens.Link, inside: string, context: ProseContext): string {
  if (!/^(?:https:\/\/|[a-z][a-z0-9-]*\.md(?:#|$))/.test(href)) return inside;
  return `<a href="${escapeHtml(context.link(href))}">${inside}</a>`;
}

function list({ ordered, start, loose, items }: Tokens.List, context: ProseContext): string {
  const name = ordered ? "ol" : "ul";
  const from = ordered && typeof start === "number" && start !== 1 ? ` start="${start}"` : "";
  const entries = items.map(({ tokens }) => `<li>${loose ? proseHtml(tokens, context) : tight(tokens, context)}</li>`);
  return `<${name}${from}>${entries.join("")}</${name}>`;
}

/** An entry of a list without blank lines: its sentences stand without paragraphs around them. */
const tight = (tokens: readonly Token[], context: ProseContext): string =>
  tokens
    .map((token) => (token.type === "paragraph" ? inlineHtml(token.tokens ?? [], context) : blockHtml(token, context)))
    .join("");

/** A table that scrolls in its own frame where it is too wide. */
function table({ header, rows }: Tokens.Table, context: ProseContext): string {
  const row = (cells: readonly Tokens.TableCell[], name: string) =>
    `<tr>${cells.map((cell) => cellHtml(cell, name, context)).join("")}</tr>`;
  const body = rows.map((cells) => row(cells, "td")).join("");
  return `<div class="scroller" tabindex="0"><table><thead>${row(header, "th")}</thead><tbody>${body}</tbody></table></div>`;
}

function cellHtml({ align, tokens }: Tokens.TableCell, name: string, context: ProseContext): string {
  const side = align === "center" || align === "right" ? ` class="${align}"` : "";
  return `<${name}${side}${name === "th" ? ' scope="col"' : ""}>${inlineHtml(tokens, context)}</${name}>`;
}
