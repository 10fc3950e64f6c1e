import { expect, test } from "vitest";
import { beforePaint } from "../../src/build/page.ts";

/** Runs the inline script over a storage, and gives what it sets on the page's root. */
function attributesAfter(stored: Record<string, string>): Record<string, string> {
  const dataset: Record<string, string> = { words: "british" };
  const localStorage = { getItem: (key: string) => (Object.hasOwn(stored, key) ? stored[key] : null) };
  new Function("document", "localStorage", beforePaint)({ documentElement: { dataset } }, localStorage);
  return dataset;
}

test("beforePaint has 500 bytes at most", () => {
  expect(Buffer.byteLength(beforePaint)).toBeLessThanOrEqual(500);
});

test("beforePaint sets shade, words and whether there is a school of one's own", () => {
  expect(attributesAfter({})).toEqual({ words: "british" });
  expect(
    attributesAfter({ "hoodwork.settings": '{"theme":"dark","words":"american"}', "hoodwork.school": "{}" }),
  ).toEqual({ theme: "dark", words: "american", own: "" });
});

test("beforePaint marks an own school whatever the settings hold", () => {
  for (const settings of ["{", "null", '{"theme":"<b>"}'])
    expect(attributesAfter({ "hoodwork.settings": settings, "hoodwork.school": "x" })).toEqual({
      words: "british",
      own: "",
    });
});
