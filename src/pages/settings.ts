/** What a reader chose for every page; kept in this browser alone. The inline script of each page reads it before the first paint. */
export interface Settings {
  readonly theme?: "light" | "dark";
  readonly words?: "british" | "american";
}

const place = "hoodwork.settings";

/** The kept settings; none where storage is refused or holds something else. */
export function readSettings(): Settings {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place) ?? "{}");
    return typeof kept === "object" && kept !== null ? kept : {};
  } catch {
    return {};
  }
}

/** Keeps a change and shows it at once; where storage is refused it holds for this page alone. */
export function changeSettings(change: Settings): void {
  Object.assign(document.documentElement.dataset, change);
  try {
    localStorage.setItem(place, JSON.stringify({ ...readSettings(), ...change }));
  } catch {
    // Refused or full: the page in hand still follows.
  }
}
