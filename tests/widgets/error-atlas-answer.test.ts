import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bankByTenthPlusSevenRule, bankForRate } from "../../src/calc/index.ts";
import { quantityOf } from "../../src/cells/quantities.ts";
import { answerOf, rangeWords } from "../../src/widgets/error-atlas/answer.ts";
import { compared, needsOf } from "../../src/widgets/error-atlas/model.ts";
import { tasRangeOf } from "../../src/widgets/error-atlas/ranges.ts";
import { rules } from "../../src/widgets/error-atlas/rules.ts";
import { aircraft, anyValues, named, valuesOf } from "./atlas-of.ts";

const plain = (words: string): string => words.replaceAll("\u00a0", " ");
const answer = (key: Parameters<typeof named>[0], values = {}): string =>
  plain(answerOf(named(key), valuesOf(named(key), values), aircraft));

describe("answerOf", () => {
  test("answerOf says from which whole knot to which a tenth and seven keeps within its tolerance", () => {
    const error = (tas: number) => bankByTenthPlusSevenRule(tas) - bankForRate(tas);
    const [from, to] = tasRangeOf(aircraft);
    const speeds = Array.from({ length: to - from + 1 }, (_, i) => from + i);
    for (const bankTolerance of [0.5, 1, 1.3]) {
      const within = speeds.filter((tas) => Math.abs(error(tas)) <= bankTolerance);
      const [first, last] = [within[0], within.at(-1)];
      expect(answer("bankByTenthPlusSevenRule", { bankTolerance })).toBe(
        `The rule is within ${bankTolerance}° from ${first} to ${last} kt; outside below ${first} kt and above ${last} kt; greatest error +${error(from).toFixed(1)}°, not on the safe side, at ${from} kt.`,
      );
    }
  });

  test("answerOf says 'throughout' where the range holds no crossing, on either side", () => {
    expect(answer("bankByTenthPlusSevenRule", { bankTolerance: 5 })).toMatch(/^The rule is within 5° throughout; /);
    expect(answer("rollOutLeadByRule", { rollRate: 1, tas: 60, headingTolerance: 30 })).toMatch(/within 30° from 0°/);
    expect(answer("verticalSpeedByRule", { pathAngle: 6, verticalSpeedTolerance: 10 })).toMatch(
      /^On a path of 6°, the rule is outside 10 ft\/min throughout; /,
    );
  });

  test("answerOf speaks of a difference where the rule is held against a model", () => {
    expect(answer("levelOffLeadByRule")).toMatch(/greatest difference [+−]\d+ ft, (not )?on the safe side, at /);
    expect(answer("levelOffLeadByRule")).not.toContain("error");
  });

  test("answerOf has a sentence for each way a rule is taught", () => {
    expect(answer("rollOutLeadByRule")).toMatch(
      /^At 95 kt, rolling out at 5 °\/s, half of the bank is .*\. A third of the bank is .*\.$/,
    );
  });

  test("answerOf goes through north where a stretch does", () => {
    const words = answer("rollOutHeadingByRule");
    const spans = [...words.matchAll(/from (\d{3})° to (\d{3})°/g)].map(([, from, to]) => [Number(from), Number(to)]);
    expect(spans.filter(([from, to]) => from! > to!)).toHaveLength(1);
    expect(words).not.toMatch(/above|below/);
  });

  test("answerOf says where there is no value, and where there is none at all", () => {
    expect(answer("maximumDriftByRule", { tas: 40 })).toContain("there is no value above 40 kt");
    expect(answer("rollOutHeadingByRule", { bank: 25, dip: 70 })).toMatch(/has no value to be compared with\.$/);
  });

  test("answerOf prints pressures as they stand on a sub-scale", () => {
    expect(answer("settingErrorByRule")).toContain("1045 hPa");
  });

  test.each(rules.map(({ key }) => [key]))("answerOf of %s claims 'within' only at places where it holds", (key) => {
    const rule = named(key);
    const { across, tolerance } = needsOf(rule);
    const { circle } = quantityOf(across)!;
    fc.assert(
      fc.property(anyValues(rule), (values) => {
        const sentences = plain(answerOf(rule, values, aircraft)).match(/[^.]*?(?:\.\d[^.]*?)*\.(?= [A-Z]|$)/g)!;
        expect(sentences).toHaveLength(rule.lines.length);
        sentences.forEach((sentence, i) => {
          const said = /is within [^;]*?(?= from)([^;]*);/.exec(sentence)?.[1] ?? "";
          for (const number of said
            .replaceAll("−", "-")
            .replaceAll(",", "")
            .match(/-?\d+(\.\d+)?/g) ?? []) {
            const x = circle && Number(number) === 360 ? 0 : Number(number);
            const { error } = compared(rule, rule.lines[i]!, { ...values, [across]: x })!;
            expect(Math.abs(error), `${sentence} at ${x}`).toBeLessThanOrEqual(values[tolerance]! * (1 + 1e-6));
          }
        });
      }),
      { numRuns: 80 },
    );
  });
});

test("rangeWords says what is judged and whose it is", () => {
  expect(plain(rangeWords(named("bankByTenthPlusSevenRule"), aircraft))).toMatch(
    /^47 to 183 kt, the Dunlin’s true air/,
  );
  expect(rangeWords(named("rollOutHeadingByRule"), aircraft)).toBe("every heading");
});
