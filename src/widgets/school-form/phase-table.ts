import { printed, unitSign } from "../../cells/printed.ts";
import { columns, entryOf, fieldNamed, type Phase, phases, rangeWords, type Values } from "../../cells/school/index.ts";
import { escaped } from "../escaped.ts";
import { controlShell, troubleShell } from "./field-shell.ts";

type Column = keyof typeof columns;
const order = Object.keys(columns) as Column[];

/** The table of phases: a row each, controls where the school states a number, and what follows as plain text. */
export function phaseTable(values: Values): string {
  const heads = order.map((column) => `<th scope="col">${escaped(columns[column].label)}${headUnit(column)}</th>`);
  const rows = phases.map((phase) => phaseRows(phase, values));
  return `<div class="scroller" tabindex="0" role="group" aria-label="Table of phases"><table class="phases"><thead><tr><th scope="col">Phase</th>${heads.join("")}</tr></thead>${rows.join("")}</table></div>`;
}

function phaseRows(phase: Phase, values: Values): string {
  const cells = order.map((column) => cell(phase, column, values));
  const troubles = phase.states.map((column) => troubleShell(fieldNamed(idOf(phase, column))!));
  return `<tbody><tr><th scope="row">${escaped(phase.label)}</th>${cells.join("")}</tr><tr class="troubles"><td colspan="${order.length + 1}">${troubles.join("")}</td></tr></tbody>`;
}

const idOf = (phase: Phase, column: Column): string => `aircraft.phases.${phase.key}.${column}`;

function cell(phase: Phase, column: Column, values: Values): string {
  const label = escaped(columns[column].label);
  if (phase.states.includes(column)) {
    const field = fieldNamed(idOf(phase, column))!;
    return `<td data-label="${label}" data-field="${field.id}">${controlShell(field, entryOf(values.get(field.id) ?? ""), true)}</td>`;
  }
  const source = phase.follows[column];
  if (source === undefined) return "<td></td>";
  return `<td data-label="${label}" data-follows="${source}" data-column="${column}">${escaped(followingText(source, column, (id) => values.get(id)))}</td>`;
}

/** What stands in a cell that follows from another field. */
export function followingText(source: string, column: string, read: (id: string) => unknown): string {
  if (source === "0") return "level";
  const value = read(source.replace(/^-/, ""));
  if (typeof value === "string") return value;
  if (typeof value !== "number") return "—";
  const own = columns[column as Column];
  return printed(source.startsWith("-") ? -value : value, { unit: "unit" in own ? own.unit : "plain", digits: 0 });
}

function headUnit(column: Column): string {
  const own = columns[column];
  if (!("unit" in own)) return "";
  const field = { kind: "number", id: "", path: [], section: "phases", ...own } as const;
  return `<span class="soft">${escaped(own.unit === "deg" ? rangeWords(field) : `${rangeWords({ ...field, unit: "plain" })} ${unitSign(own.unit)}`)}</span>`;
}
