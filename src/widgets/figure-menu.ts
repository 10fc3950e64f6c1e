/** Closes an open menu when a reader turns elsewhere, or presses Escape in it. */
export function closeBehind(menu: HTMLDetailsElement, left: AbortSignal): void {
  const close = (event: Event): void => {
    if (menu.open && !menu.contains(event.target as Node)) menu.open = false;
  };
  menu.ownerDocument.addEventListener("click", close, { signal: left });
  menu.addEventListener("keydown", ({ key }) => key === "Escape" && shut(menu), { signal: left });
}

function shut(menu: HTMLDetailsElement): void {
  menu.open = false;
  menu.querySelector("summary")!.focus();
}
