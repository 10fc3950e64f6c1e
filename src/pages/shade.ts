import { changeSettings } from "./settings.ts";

/** The light switch of the mast: names the shade it would change to. */
export function bindShade(): void {
  const button = document.querySelector<HTMLButtonElement>('[data-part="shade"]');
  if (!button) return;
  const name = () => {
    button.textContent = isDark() ? "Light" : "Dark";
  };
  button.addEventListener("click", () => {
    changeSettings({ theme: isDark() ? "light" : "dark" });
    name();
  });
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", name);
  name();
}

function isDark(): boolean {
  const chosen = document.documentElement.dataset["theme"];
  return chosen ? chosen === "dark" : matchMedia("(prefers-color-scheme: dark)").matches;
}
