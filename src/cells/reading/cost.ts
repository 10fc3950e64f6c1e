/** Formulas that integrate step by step: each call takes as long as about a hundred of the others. */
const integrators = new Set([
  "turnLeadDistanceRolling",
  "heightInUncompensatedBank",
  "spiralDive",
  "recoveryCost",
  "fitLag",
  "airspeedWithBlockedPitot",
]);

const INTEGRATOR = 100;

/** What evaluating an expression costs, in calls of an ordinary formula. */
export function expressionCost(text: string): number {
  let cost = 1;
  for (const [, name = ""] of text.matchAll(/([A-Za-z]\w*) ?\(/g)) cost += integrators.has(name) ? INTEGRATOR : 1;
  return cost;
}

/** Names of any kind in an expression: each unknown one is compared with all that are known. */
export const wordsIn = (text: string): number => text.match(/[A-Za-z][\w.]*/g)?.length ?? 0;
