import type { Problem } from "../cells/problem.ts";
import type { School } from "../cells/school/index.ts";

/** Larger than any school's file. */
const LONGEST = 100_000;

/** Takes in a file, chosen or pasted: a sound one is handed to `found`; of any other every problem is listed. */
export function bindImport(found: (school: School, name: string) => void): void {
  const part = <E extends HTMLElement>(name: string): E => document.querySelector<E>(`[data-part="${name}"]`)!;
  const [file, pasted] = [part<HTMLInputElement>("import-file"), part<HTMLTextAreaElement>("import-text")];
  const read = async (text: string, name: string): Promise<void> => {
    const { value, problems } = await readText(text, name);
    list(problems, name);
    if (value) found(value, name);
  };
  file.addEventListener("change", async () => {
    const [chosen] = file.files ?? [];
    if (!chosen) return;
    const text = chosen.size > LONGEST ? "" : await chosen.text();
    await read(text, chosen.name);
    file.value = ""; // the same file, mended, may be chosen again
  });
  part("import-read").addEventListener("click", () => void read(pasted.value, "What was pasted"));
}

/** The reader of files comes only now: few readers ever need it. */
async function readText(text: string, name: string): Promise<{ value?: School; problems: readonly Problem[] }> {
  const problem = (message: string, mend: string) => ({
    problems: [{ file: name, line: 1, column: 1, message, mend }],
  });
  if (text.trim() === "" || text.length > LONGEST)
    return problem("There is nothing in it, or far too much.", "Choose a file that this page exported.");
  try {
    const { readSchool } = await import("../cells/reading/school.ts");
    return readSchool(text, name);
  } catch {
    return problem("The part of the workbook that reads files could not be loaded.", "Go online and try again.");
  }
}

function list(problems: readonly Problem[], name: string): void {
  const box = document.querySelector<HTMLElement>('[data-part="import-problems"]')!;
  box.replaceChildren();
  if (problems.length === 0) return;
  const count = problems.length === 1 ? "one reason" : `${problems.length} reasons`;
  const head = Object.assign(document.createElement("p"), {
    textContent: `${name} is refused for ${count}; nothing has changed.`,
  });
  const items = problems.map(({ line, column, message, mend }) =>
    Object.assign(document.createElement("li"), { textContent: `Line ${line}, column ${column}: ${message} ${mend}` }),
  );
  const all = document.createElement("ol");
  all.append(...items);
  box.append(head, all);
}
