import type { Token, Tokens } from "marked";

/** The words of inline tokens without their marks: for names, addresses and assistive technology. */
export function plainText(tokens: readonly Token[]): string {
  return tokens.map(wordsOf).join("");
}

function wordsOf(token: Token): string {
  switch (token.type) {
    case "live":
      return `{${token.name}}`;
    case "math":
      return String(token.tex);
    case "note":
      return "";
    case "br":
      return " ";
    default: {
      const { tokens, text } = token as Tokens.Generic;
      return tokens ? plainText(tokens) : String(text ?? "");
    }
  }
}
