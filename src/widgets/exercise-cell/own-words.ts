/** What a reader says went wrong: the path the verdict named, a slip of the keys, or her own words. */
export interface OwnWords {
  readonly reason: "path" | "typing" | "other";
  readonly words: string;
}

/** An offer after a slip: to say what went wrong. It may be left alone. */
export const ownWordsHtml = (id: string): string =>
  `<form data-part="own-form" novalidate><div role="group" aria-labelledby="${id}-own"><p class="label" id="${id}-own">What went wrong?<span class="soft">if you like to say</span></p><div class="tools"><button type="button" class="said" aria-pressed="false" data-reason="path">That is what I did</button><button type="button" class="said" aria-pressed="false" data-reason="typing">A typing slip</button></div><p class="other"><label for="${id}-own-words">Something else</label><input id="${id}-own-words" type="text" maxlength="200" autocomplete="off" enterkeyhint="done"><button type="submit" class="said">Note it</button></p></div></form>`;

/** Calls `said` whenever the reader says something in an offer made by `ownWordsHtml`; what is said last holds. */
export function bindOwnWords(form: HTMLFormElement, said: (own: OwnWords) => void): void {
  const buttons = [...form.querySelectorAll<HTMLButtonElement>("button[data-reason]")];
  const press = (pressed?: HTMLButtonElement): void => {
    for (const button of buttons) button.setAttribute("aria-pressed", String(button === pressed));
  };
  for (const button of buttons) {
    button.addEventListener("click", () => {
      press(button);
      said({ reason: button.dataset["reason"] as OwnWords["reason"], words: "" });
    });
  }
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const words = form.querySelector("input")!.value.trim();
    if (words === "") return;
    press();
    said({ reason: "other", words });
  });
}
