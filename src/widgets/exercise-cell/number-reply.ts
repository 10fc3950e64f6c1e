import type { ReplyControl } from "./reply.ts";

/** A field for one number. */
export function numberReply(form: HTMLFormElement): ReplyControl {
  const field = form.querySelector<HTMLInputElement>('[data-part="reply"]')!;
  return {
    read: () => field.value,
    ask: () => {
      field.value = "";
    },
    note: () => {},
    focus: () => field.focus(),
  };
}
