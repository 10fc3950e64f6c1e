const LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";

/** Up to three names of a list that a misspelt name may have meant, the likeliest first. */
export function nearIn(name: string, names: readonly string[]): string[] {
  const lower = name.toLowerCase();
  const far = Math.max(1, Math.floor(name.length / 4));
  const isPart = (each: string) => lower.length >= 4 && each.toLowerCase().includes(lower);
  return names
    .map((each) => ({ each, edits: edits(lower, each.toLowerCase()) }))
    .filter(({ each, edits }) => edits <= far || isPart(each))
    .sort((a, b) => a.edits - b.edits)
    .slice(0, 3)
    .map(({ each }) => each);
}

/** The same where names can't be listed but only asked for: those one letter off, or lacking 'aircraft.', 'place.' or 'technique.'. */
export function nearKnown(name: string, isKnown: (name: string) => boolean): string[] {
  const variants = new Set([`aircraft.${name}`, `place.${name}`, `technique.${name}`]);
  for (let i = 0; i <= name.length; i++) {
    const [before, after] = [name.slice(0, i), name.slice(i)];
    variants.add(before + after.slice(1));
    if (after.length > 1) variants.add(before + after[1] + after[0] + after.slice(2));
    for (const letter of LETTERS) variants.add(before + letter + after).add(before + letter + after.slice(1));
  }
  return [...variants].filter((variant) => variant !== name && isKnown(variant)).slice(0, 3);
}

/** Letters to insert, drop, change or swap with a neighbour to make one word of the other. */
function edits(a: string, b: string): number {
  let [older, old]: [number[], number[]] = [[], Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = old[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? older[j - 2]! + 1 : Infinity;
      row.push(Math.min(old[j]! + 1, row[j - 1]! + 1, changed, swapped));
    }
    [older, old] = [old, row];
  }
  return old[b.length]!;
}
