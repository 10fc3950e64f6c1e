/** What a fence may be: cells of the chapter, and plain text shown as it stands. */
export const cellKinds = ["figure", "exercise", "working", "predict", "brief", "notes", "text"] as const;
export type CellKind = (typeof cellKinds)[number];
