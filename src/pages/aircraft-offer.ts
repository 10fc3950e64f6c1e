import { type Difference, differences, type School } from "../cells/school/index.ts";

/** A school that came from outside: what differs is shown, and nothing is replaced before the reader says so. */
export function offer(school: School, from: string, standing: School, take: (school: School) => void): void {
  const box = document.querySelector<HTMLElement>('[data-part="offer"]')!;
  const part = (name: string): HTMLElement => box.querySelector<HTMLElement>(`[data-part="${name}"]`)!;
  const list = differences(standing, school);
  part("offer-words").textContent = words(school, from, list.length);
  part("differences").replaceChildren(...list.map(rowOf));
  part("offer-table").hidden = list.length === 0;
  const [accept, decline] = [part("take"), part("leave")] as [HTMLButtonElement, HTMLButtonElement];
  accept.hidden = list.length === 0;
  decline.textContent = list.length === 0 ? "Close" : "Leave mine as they are";
  const close = (): void => {
    box.hidden = true;
    document.querySelector<HTMLElement>('[data-part="state"]')?.focus();
  };
  accept.onclick = () => {
    close();
    take(school);
  };
  decline.onclick = close;
  box.hidden = false;
  box.scrollIntoView({ block: "start" });
  box.focus({ preventScroll: true });
}

function words({ aircraft }: School, from: string, count: number): string {
  const whose = `${from}: the numbers of ${aircraft.owner}.`;
  if (count === 0) return `${whose} They are the same as those here.`;
  return `${whose} ${count === 1 ? "One entry differs" : `${count} entries differ`} from what stands here.`;
}

function rowOf({ field, one, other }: Difference): HTMLTableRowElement {
  const row = document.createElement("tr");
  const inWords = (entry: string): string => {
    if (entry === "") return "—";
    if (field.kind === "choice") return field.choices[entry] ?? entry;
    const unit = field.kind === "number" && field.unit !== "plain" ? ` ${field.unit}` : "";
    return entry.split("\n").join(" · ") + unit;
  };
  const head = Object.assign(document.createElement("th"), { scope: "row", textContent: field.label });
  const cells = [one, other].map((entry) =>
    Object.assign(document.createElement("td"), { textContent: inWords(entry) }),
  );
  row.append(head, ...cells);
  return row;
}
