import type { Term } from "../known.ts";
import type { Problem } from "../problem.ts";
import type { Outcome } from "./course.ts";
import { readInline } from "./inline.ts";
import { didYouMean, quoted } from "./near.ts";
import { readable, type Source } from "./source.ts";

/** Reads glossary.md (its head says how it is written); never throws. */
export function readGlossary(markdown: string, file: string): Outcome<readonly Term[]> {
  const { source, problems } = readable(typeof markdown === "string" ? markdown : "", file);
  const entries = entriesOf(source).map((lines) => new EntryReader(lines, source).read());
  problems.push(...entries.flatMap((entry) => entry.problems));
  const terms = entries.map(({ term }) => term);
  problems.push(...twice(entries, source));
  for (const { term, meaningAt } of entries) {
    const place = (offset: number) => source.place(meaningAt + offset);
    problems.push(
      ...readInline(term.meaning, { file, place, names: new Set(), known: { terms, chapters: [] } }).problems,
    );
  }
  if (terms.length === 0)
    problems.push(source.problem(0, "The glossary has no terms.", "Start each with '## ' and its key."));
  return problems.length > 0 ? { problems } : { value: terms, problems };
}

interface Line {
  readonly text: string;
  readonly at: number;
}

interface Entry {
  readonly term: Term;
  readonly at: number;
  readonly meaningAt: number;
  readonly problems: readonly Problem[];
}

/** The lines of each entry, its heading first; what stands before the first heading introduces the file. */
function entriesOf({ text }: Source): Line[][] {
  const entries: Line[][] = [];
  let at = 0;
  for (const line of text.split("\n")) {
    if (line.startsWith("## ")) entries.push([]);
    entries.at(-1)?.push({ text: line, at });
    at += line.length + 1;
  }
  return entries;
}

function twice(entries: readonly Entry[], source: Source): Problem[] {
  const seen = new Set<string>();
  return entries.flatMap(({ term: { key }, at }) => {
    const again = seen.has(key);
    seen.add(key);
    return again ? [source.problem(at, `The key ${quoted(key)} stands here twice.`, "Make one entry of the two.")] : [];
  });
}

const labels = ["British", "American", "Everywhere", "Forms"] as const;
type Label = (typeof labels)[number];

class EntryReader {
  readonly #problems: Problem[] = [];
  readonly #lines: readonly Line[];
  readonly #source: Source;
  readonly #words = new Map<Label, Line>();

  constructor(lines: readonly Line[], source: Source) {
    this.#lines = lines;
    this.#source = source;
  }

  read(): Entry {
    const [head, ...lines] = this.#lines as [Line, ...Line[]];
    const key = head.text.slice(3).trim();
    if (!/^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/.test(key))
      this.#add(head.at, `${quoted(key)} is no key.`, "Use small letters, digits and hyphens.");
    for (const line of lines) if (line.text.startsWith("- ")) this.#label(line);
    const { british, american } = this.#regional(head);
    const first = lines.findIndex(({ text }) => text.trim() !== "" && !text.startsWith("- "));
    const meaning =
      first < 0
        ? ""
        : lines
            .slice(first)
            .map(({ text }) => text)
            .join("\n")
            .trim();
    if (meaning === "")
      this.#add(head.at, `The term ${quoted(key)} has no meaning.`, "Write it beneath, after a blank line.");
    if (/\n\s*\n|^- /m.test(meaning))
      this.#add(head.at, `The meaning of ${quoted(key)} isn't one paragraph.`, "Write it in one, after the words.");
    const term: Term = { key, british, american, forms: this.#forms(), meaning };
    return { term, at: head.at, meaningAt: lines[first]?.at ?? head.at, problems: this.#problems };
  }

  /** '- British: rate one' */
  #label({ text, at }: Line): void {
    const [, label = "", words = ""] = /^- ([^:]*):[ \t]*(.*)$/.exec(text) ?? [];
    if (!(labels as readonly string[]).includes(label) || words.trim() === "") {
      this.#add(at, "This line names no form of the term.", `Write '- British: word'. ${didYouMean(label, labels)}`);
    } else if (this.#words.has(label as Label))
      this.#add(at, `'${label}' stands here twice.`, "Delete one of the two.");
    else this.#words.set(label as Label, { text: words.trim(), at });
  }

  #regional(head: Line): { british: string; american: string } {
    const [british, american, everywhere] = labels.map((label) => this.#words.get(label)?.text);
    if (everywhere && !british && !american) return { british: everywhere, american: everywhere };
    if (british && american && !everywhere) return { british, american };
    this.#add(
      head.at,
      "The term's words are missing or too many.",
      "Write '- British:' and '- American:', or '- Everywhere:' alone.",
    );
    return { british: british ?? everywhere ?? "", american: american ?? everywhere ?? "" };
  }

  /** 'balanced / coordinated; in balance / in coordination'; one word alone where the regions agree. */
  #forms(): [string, string][] {
    const line = this.#words.get("Forms");
    if (!line) return [];
    return line.text.split(";").map((pair): [string, string] => {
      const [british = "", american = british, ...rest] = pair.split("/").map((each) => each.trim());
      if (british === "" || american === "" || rest.length > 0)
        this.#add(
          line.at,
          `${quoted(pair.trim())} is no pair of forms.`,
          "Write 'balanced / coordinated', with ';' between pairs.",
        );
      return [british, american];
    });
  }

  #add(at: number, message: string, mend: string): void {
    this.#problems.push(this.#source.problem(at, message, mend));
  }
}
