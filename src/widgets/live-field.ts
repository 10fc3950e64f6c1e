import { typedNumber } from "./live-steps.ts";

export interface FieldRequest {
  readonly label: string;
  readonly value: number;
  /** Called once, with what was typed, if it is a number and was not called off. */
  readonly commit: (value: number) => void;
}

/** A small number field in the place of a given: Enter and leaving it commit, Escape calls it off. */
export function openField(span: HTMLElement, { label, value, commit }: FieldRequest): HTMLInputElement {
  const field = span.ownerDocument.createElement("input");
  field.className = "given-field";
  field.inputMode = "decimal";
  field.autocomplete = "off";
  field.setAttribute("aria-label", label);
  field.value = `${value}`.replace("-", "−");
  field.size = Math.max(5, field.value.length + 1);
  let open = true;
  const close = (): void => {
    open = false;
    field.remove();
    span.hidden = false;
  };
  const settle = (): boolean => {
    const typed = typedNumber(field.value);
    if (typed === undefined) return false;
    close();
    if (typed !== value) commit(typed);
    return true;
  };
  field.addEventListener("keydown", (event) => {
    event.stopPropagation();
    if (event.key !== "Escape" && event.key !== "Enter") return field.removeAttribute("aria-invalid");
    event.preventDefault();
    if (event.key === "Escape") close();
    else if (!settle()) return field.setAttribute("aria-invalid", "true");
    span.focus();
  });
  field.addEventListener("blur", () => {
    if (open && !settle()) close();
  });
  span.hidden = true;
  span.after(field);
  field.select();
  field.focus();
  return field;
}
