import type { Token, Tokens } from "marked";
import { cellKinds } from "./kinds.ts";
import { quoted } from "./near.ts";

type Words = readonly [message: string, mend: string];

/** An author's words for a token that may not stand in prose. */
export function wordsOf(token: Token | { type: "stray"; raw: string }): Words {
  switch (token.type) {
    case "stray":
      return strayWords(token.raw);
    case "html":
      return [
        `Raw HTML can't stand in a chapter: ${quoted(token.raw.trim())}.`,
        "Write it in Markdown; a plain < is written \\<, and remarks for the instructor go into a notes fence.",
      ];
    case "image":
      return ["A picture can't stand in a chapter: figures are drawn.", "Show a figure, or describe it in words."];
    case "def":
      return token.raw.startsWith("[^")
        ? [
            "A side note's text can't stand here.",
            "Put it at the start of a line of the chapter, outside lists and fences.",
          ]
        : ["A link's address can't stand apart from it.", "Write [text](https://…) where the link belongs."];
    case "heading":
      return [
        "This is read as a heading that opens no section.",
        "Start a section with '## ' at the line's first column; leave a blank line before a rule of dashes.",
      ];
    default:
      return codeWords(token);
  }
}

function strayWords(raw: string): Words {
  if (raw === "$$")
    return [
      "'$$' can stand only on lines of its own.",
      "Put it at the line's first column, or write $…$ within a sentence.",
    ];
  if (raw === "$")
    return [
      "This '$' opens or closes nothing.",
      "Maths is written $x$, without spaces inside the signs; a plain dollar sign is \\$.",
    ];
  return [
    `${quoted(raw)} isn't a live value.`,
    "Write {name} with the name of a given or of work; a plain brace is \\{.",
  ];
}

function codeWords(token: Token | { type: "stray" }): Words {
  const { lang, codeBlockStyle } = token as Tokens.Code;
  if (codeBlockStyle === "indented")
    return [
      "Four spaces or more make this line a block of code.",
      "Indent it less, or use a text fence at the line's first column.",
    ];
  const kind = (lang ?? "").split(/\s/)[0]!;
  if ((cellKinds as readonly string[]).includes(kind))
    return [
      `A fence of kind '${kind}' can't stand inside a list or a quote, nor be indented.`,
      "Start it at the line's first column.",
    ];
  return ["A fence can't stand inside a list or a quote, nor be indented.", "Start it at the line's first column."];
}
