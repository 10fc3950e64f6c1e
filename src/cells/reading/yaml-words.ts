import type { ErrorCode } from "yaml";

type Words = readonly [message: string, mend: string];

const quotes = "Put text that has ': ' or ' #' in it, or that starts with a sign such as { [ @ % or `, in quotes.";
const indents = "Indent the keys of one list equally, with spaces, and deeper than the key they belong to.";

const words: Partial<Readonly<Record<ErrorCode, Words>>> = {
  BAD_DQ_ESCAPE: [
    "A backslash in double quotes means something else here.",
    "Use single quotes, in which a backslash is a backslash.",
  ],
  BAD_INDENT: ["This line's indentation fits nothing above it.", indents],
  BAD_SCALAR_START: ["Text can't start with this sign.", quotes],
  BLOCK_AS_IMPLICIT_KEY: ["A second ': ' stands on this line.", quotes],
  BLOCK_IN_FLOW: [
    "A list by lines stands inside braces or brackets.",
    "Write the whole of it one key a line, without braces.",
  ],
  KEY_OVER_1024_CHARS: ["A key is far too long.", "Write 'key: value' with a short key."],
  MISSING_CHAR: [
    "A closing sign, a ':' or a quote is missing.",
    "Close what is open; write 'key: value' with a space after ':'.",
  ],
  MULTILINE_IMPLICIT_KEY: [
    "A line without 'key:' stands where a key is expected.",
    "Indent it to continue the text above, or give it its key.",
  ],
  MULTIPLE_DOCS: ["Only one document may stand here.", "Delete '---' and '...'."],
  NON_STRING_KEY: ["A key is no word.", "Write 'key: value' with a plain word as key."],
  TAB_AS_INDENT: ["A tab indents this line.", "Indent with spaces."],
  UNEXPECTED_TOKEN: ["Something stands here that can't.", quotes],
};

/** An author's words for an error of the YAML library. */
export const wordsOf = (code: ErrorCode): Words =>
  words[code] ?? ["This can't be read.", "Write 'key: value', one key a line."];
