import { KEPT, type KeptSchool, keptFrom } from "../cells/school/kept.ts";
import type { School } from "../cells/school/school.ts";

// In localStorage, unlike other records: every page must know before its first paint whether the reader has numbers of
// her own, and only localStorage answers at once.
const PLACE = "hoodwork.school";

/** What is kept of the reader's own school; 'unreadable' where something is kept that isn't one. */
export function keptSchool(): KeptSchool | "unreadable" | undefined {
  const json = read();
  return json === null ? undefined : (keptFrom(json) ?? "unreadable");
}

/** Keeps a school with the text of its file; false where the browser refuses, and nothing is kept. */
export function keepSchool(school: School, text: string): boolean {
  const kept: KeptSchool = { version: KEPT, text, school };
  try {
    localStorage.setItem(PLACE, JSON.stringify(kept));
    return true;
  } catch {
    return false;
  }
}

/** Lets the own school go; false where the browser refuses. */
export function forgetSchool(): boolean {
  try {
    localStorage.removeItem(PLACE);
    return true;
  } catch {
    return false;
  }
}

/** Tells when another tab has kept a school or let it go; returns what ends it. */
export function onSchoolElsewhere(listener: () => void): () => void {
  const heard = ({ key, storageArea }: StorageEvent): void => {
    if (storageArea === localStorage && (key === PLACE || key === null)) listener();
  };
  window.addEventListener("storage", heard);
  return () => window.removeEventListener("storage", heard);
}

function read(): string | null {
  try {
    return localStorage.getItem(PLACE);
  } catch {
    return null;
  }
}
