/** Half-widths, in standard errors, of a two-sided 95 % interval with 1 to 10 degrees of freedom. @source Student's t */
const TABLE = [12.7062, 4.3027, 3.1824, 2.7764, 2.5706, 2.4469, 2.3646, 2.306, 2.2622, 2.2281];
/** The same for the normal distribution. */
const NORMAL = 1.959964;

/**
 * Half-width of a two-sided 95 % interval in standard errors: tabulated up to ten degrees of freedom, beyond by its
 * expansion about the normal distribution, good to 0.0002.
 *
 * @param degreesOfFreedom readings less fitted constants, at least 1
 */
export function studentNinetyFive(degreesOfFreedom: number): number {
  const z = NORMAL;
  const first = (z ** 3 + z) / 4;
  const second = (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96;
  const third = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384;
  const ν = degreesOfFreedom;
  return TABLE[ν - 1] ?? z + first / ν + second / ν ** 2 + third / ν ** 3;
}
