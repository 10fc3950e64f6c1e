import fc from "fast-check";
import { expect, test } from "vitest";
import { type Reading, readReply } from "../../src/cells/exercises/reply.ts";

const readings = (reply: string, unit: string, circle = false): readonly Reading[] => {
  const read = readReply(reply, { unit, circle });
  return "readings" in read ? read.readings : [];
};
const values = (reply: string, unit: string, circle = false): number[] =>
  readings(reply, unit, circle).map(({ value }) => value);
const complaint = (reply: string, unit: string, circle = false): string => {
  const read = readReply(reply, { unit, circle });
  return "unreadable" in read ? read.unreadable : "";
};

test.each<[reply: string, unit: string, value: number]>([
  ["17", "deg", 17],
  ["17.0", "deg", 17],
  ["17.", "deg", 17],
  ["+17", "deg", 17],
  ["+ 17", "deg", 17],
  ["17°", "deg", 17],
  ["17 °", "deg", 17],
  ["17º", "deg", 17],
  ["17 deg", "deg", 17],
  ["17deg.", "deg", 17],
  ["17 Degrees", "deg", 17],
  ["  17  ", "deg", 17],
  ["\t17\n", "deg", 17],
  ["-17", "deg", -17],
  ["\u221217", "deg", -17],
  ["\u201317", "deg", -17],
  ["\u2212\u00a017", "deg", -17],
  ["minus 17", "deg", -17],
  ["plus 17", "deg", 17],
  ["left 20", "deg", -20],
  ["Left 20°", "deg", -20],
  ["20 left", "deg", -20],
  ["20° left", "deg", -20],
  ["20 degrees left", "deg", -20],
  ["L20", "deg", -20],
  ["L 20", "deg", -20],
  ["20L", "deg", -20],
  ["R20", "deg", 20],
  ["right 20", "deg", 20],
  ["20°R", "deg", 20],
  ["3 E", "deg", 3],
  ["3E", "deg", 3],
  ["3°E", "deg", 3],
  ["E 3", "deg", 3],
  ["3 east", "deg", 3],
  ["3 W", "deg", -3],
  ["3.5 west", "deg", -3.5],
  ["W3", "deg", -3],
  ["33 S", "deg", -33],
  ["33 south", "deg", -33],
  ["51.5 N", "deg", 51.5],
  ["N 51.5°", "deg", 51.5],
  ["3 °/s", "deg/s", 3],
  ["3°/s", "deg/s", 3],
  ["3 deg/s", "deg/s", 3],
  ["3 deg/sec", "deg/s", 3],
  ["3 degrees a second", "deg/s", 3],
  ["3 degrees per second", "deg/s", 3],
  ["left 3 deg/s", "deg/s", -3],
  ["3 °/s L", "deg/s", -3],
  ["0.6", "NM", 0.6],
  [".6", "NM", 0.6],
  ["0,6 NM", "NM", 0.6],
  ["0.6nm", "NM", 0.6],
  ["0.6 nmi", "NM", 0.6],
  ["0.6 n.m.", "NM", 0.6],
  ["0.6 nautical miles", "NM", 0.6],
  ["0.6 miles", "NM", 0.6],
  ["0,600", "NM", 0.6],
  ["½", "NM", 0.5],
  ["½ NM", "NM", 0.5],
  ["1½ NM", "NM", 1.5],
  ["1 ½", "NM", 1.5],
  ["1/2", "NM", 0.5],
  ["1 1/2 NM", "NM", 1.5],
  ["11/2", "NM", 5.5],
  ["¾", "NM", 0.75],
  ["1\u20442", "NM", 0.5],
  ["1 100 m", "m", 1100],
  ["1\u00a0100\u202fm", "m", 1100],
  ["1 234 567", "m", 1234567],
  ["1,234,567", "m", 1234567],
  ["1.234.567", "m", 1234567],
  ["1,100.5 m", "m", 1100.5],
  ["1.100,5 m", "m", 1100.5],
  ["1 100,5 m", "m", 1100.5],
  ["1100 metres", "m", 1100],
  ["1100 Meters", "m", 1100],
  ["1e3", "m", 1000],
  ["1.1E3 m", "m", 1100],
  ["5e-1 m", "m", 0.5],
  ["1,5e3", "m", 1500],
  ["2400'", "ft", 2400],
  ["2400\u2032", "ft", 2400],
  ["2400 feet", "ft", 2400],
  ["2,5", "ft", 2.5],
  ["2,50", "ft", 2.5],
  ["95 KT", "kt", 95],
  ["95 kts", "kt", 95],
  ["95 knots", "kt", 95],
  ["500 fpm", "ft/min", 500],
  ["500 ft/min", "ft/min", 500],
  ["500 feet per minute", "ft/min", 500],
  ["500 feet a minute", "ft/min", 500],
  ["-500 FPM", "ft/min", -500],
  ["1013 mb", "hPa", 1013],
  ["1013 hpa", "hPa", 1013],
  ["1013 millibars", "hPa", 1013],
  ['29.92"', "inHg", 29.92],
  ["29.92 in", "inHg", 29.92],
  ["29.92 inHg", "inHg", 29.92],
  ["-5 C", "degC", -5],
  ["−5 °C", "degC", -5],
  ["-5°", "degC", -5],
  ["-5 degrees", "degC", -5],
  ["1.15 g", "g", 1.15],
  ["1.15G", "g", 1.15],
  ["1.15", "plain", 1.15],
  ["318 ft/NM", "ft/NM", 318],
  ["318 feet per nautical mile", "ft/NM", 318],
  ["1.5 kt/s", "kt/s", 1.5],
  ["1.5 knots a second", "kt/s", 1.5],
  ["90", "s", 90],
  ["90 s", "s", 90],
  ["90 sec", "s", 90],
  ["90 Seconds", "s", 90],
  ["1:30", "s", 90],
  ["01:30", "s", 90],
  ["1:30.5", "s", 90.5],
  ["1:05:30", "s", 3930],
  ["1 min 30 s", "s", 90],
  ["1m30s", "s", 90],
  ["1 min 30", "s", 90],
  ["1'30\"", "s", 90],
  ["1.5 min", "s", 90],
  ["1:30", "min", 1.5],
  ["1:30", "h", 1.5],
  ["1 h 30 min", "h", 1.5],
  ["1h30", "h", 1.5],
  ["3 m", "min", 3],
])("readReply reads %j, in %s, as %d", (reply, unit, value) => {
  expect(values(reply, unit)).toEqual([expect.closeTo(value, 12)]);
});

// Exact definitions: 1 NM = 1852 m, 1 ft = 0.3048 m, 1 inHg = 33.8639 hPa.
test.each<[reply: string, unit: string, value: number]>([
  ["926 m", "NM", 0.5],
  ["1.852 km", "NM", 1],
  ["1000 ft", "m", 304.8],
  ["1 NM", "m", 1852],
  ["10 km/h", "m/s", 10 / 3.6],
  ["100 kph", "kt", 100 / 1.852],
  ["100 mph", "kt", 160.9344 / 1.852],
  ["1.852 km/h", "kt", 1],
  ["1 NM/h", "kt", 1],
  ["1 kt", "ft/min", 1852 / 0.3048 / 60],
  ["1 inHg", "hPa", 33.8639],
  ["50 F", "degC", 10],
  ["283.15 K", "degC", 10],
  ["2 min", "s", 120],
  ["0.5 h", "min", 30],
  ["1 sm", "km", 1.609344],
])("readReply converts %j into %s: %d", (reply, unit, value) => {
  expect(values(reply, unit)).toEqual([expect.closeTo(value, 9)]);
});

test.each<[reply: string, unit: string, first: number, second: number]>([
  ["1,100", "m", 1100, 1.1],
  ["17,250 ft", "ft", 17250, 17.25],
  ["-1,100", "ft", -1100, -1.1],
  ["4 %", "plain", 4, 0.04],
])("readReply reads %j, in %s, both as %d and as %d", (reply, unit, first, second) => {
  expect(values(reply, unit)).toEqual([expect.closeTo(first, 12), expect.closeTo(second, 12)]);
});

test.each<[reply: string, value: number]>([
  ["007", 7],
  ["7", 7],
  ["360", 360],
  ["0", 0],
  ["000", 0],
  ["270 T", 270],
  ["270T", 270],
  ["270M", 270],
  ["270° M", 270],
  ["270 deg true", 270],
  ["270 magnetic", 270],
  ["270.5", 270.5],
])("readReply reads the heading %j as %d", (reply, value) => {
  expect(values(reply, "deg", true)).toEqual([value]);
});

test.each<[reply: string, unit: string, sentence: RegExp]>([
  ["", "kt", /^Nothing was written: a speed is wanted, in kt\.$/],
  ["   \u00a0", "kt", /^Nothing was written/],
  ["fast", "kt", /not a number/],
  ["kt", "kt", /not a number/],
  ["-", "kt", /not a number/],
  [".", "kt", /not a number/],
  ["1/0", "kt", /not a number/],
  ["12 34", "kt", /not a number/],
  ["1,10,100", "kt", /not a number/],
  ["1.2.3", "kt", /not a number/],
  ["1 + 1", "kt", /no unit known/],
  ["95 kt 3", "kt", /no unit known/],
  ["95 constructor", "kt", /no unit known/],
  ["95 zz", "kt", /no unit known/],
  ["1e999", "m", /too large|not a number/],
  ["1e40", "m", /too large/],
  ["95 m", "kt", /^A speed is wanted, in kt; you gave a length\.$/],
  ["95 s", "kt", /^A speed is wanted, in kt; you gave a time\.$/],
  ["1:30", "kt", /^A speed is wanted, in kt; you gave a time\.$/],
  ["0.6 kt", "NM", /^A length is wanted, in NM; you gave a speed\.$/],
  ["3°", "deg/s", /^A rate of turn is wanted, in degrees a second; you gave an angle\.$/],
  ["15 kt", "deg", /^An angle is wanted, in degrees; you gave a speed\.$/],
  ["1.2 kt", "plain", /^A plain number is wanted; you gave a speed\.$/],
  ["4 %", "kt", /you gave a plain number/],
  ["left 20", "kt", /direction has no meaning/],
  ["20 left", "NM", /direction has no meaning/],
  ["33 N", "deg/s", /no unit known|direction/],
  ["left -20", "deg", /direction and a minus/],
  ["left 20 right", "deg", /two directions/],
  ["1:75", "s", /no unit known/],
])("readReply cannot read %j where the unit is %s, and says so", (reply, unit, sentence) => {
  expect(complaint(reply, unit)).toMatch(sentence);
});

test.each(["370", "-10", "E", "left 20", "90 E", "270 kt", "400°"])("readReply takes %j for no heading", (reply) => {
  expect(complaint(reply, "deg", true)).not.toBe("");
});

test("readReply reads 100 characters and refuses 101", () => {
  expect(values(`${" ".repeat(98)}17`, "deg")).toEqual([17]);
  expect(complaint(`${" ".repeat(99)}17`, "deg")).toMatch(/too long/);
});

test.each<[reply: string, grains: number[]]>([
  ["17", [1]],
  ["17.0", [0.1]],
  ["0.49", [0.01]],
  ["0.5", []],
  ["7", []],
  ["007", []],
  ["1100", [1, 10, 100]],
  ["1000", [1, 10, 100]],
  ["100", [1, 10]],
  ["1.10e3", [10]],
  ["½", []],
])("readReply takes %j as rounded to %j", (reply, grains) => {
  expect(readings(reply, "m")[0]!.typed.grains).toEqual(grains.map((grain) => expect.closeTo(grain, 12)));
});

test("readReply gives back every number it is typed, in any of its spellings", () => {
  const sizes = fc.tuple(fc.integer({ min: 0, max: 9_999_999 }), fc.integer({ min: 0, max: 3 }), fc.boolean());
  fc.assert(
    fc.property(sizes, ([whole, decimals, negative]) => {
      const plain = (whole / 10 ** decimals).toFixed(decimals);
      const value = (negative ? -1 : 1) * Number(plain);
      const sign = negative ? "−" : "";
      const spaced = plain.replace(/\B(?<!\.\d*)(?=(\d{3})+(?!\d))/g, " ");
      for (const text of [plain, `${plain} m`, spaced, plain.replace(".", ","), spaced.replaceAll(" ", ",")]) {
        expect(values(sign + text, "m")).toContainEqual(expect.closeTo(value + 0, 9));
      }
    }),
  );
});

test("readReply never throws, and reads finite numbers or gives a sentence", () => {
  const units = fc.constantFrom("kt", "NM", "deg", "deg/s", "s", "degC", "plain", "g", "ft/NM", "hPa");
  const typed = fc.oneof(
    fc.string({ maxLength: 110, unit: "binary" }),
    fc.string({ maxLength: 20, unit: fc.constantFrom(..."0123456789.,:/½e+-−° 'lrewnsmktfhg%\"") }),
  );
  fc.assert(
    fc.property(typed, units, fc.boolean(), (reply, unit, circle) => {
      const read = readReply(reply, { unit, circle: circle && unit === "deg" });
      if ("unreadable" in read) expect(read.unreadable).toMatch(/^[A-Z].*\.$/);
      else expect(read.readings.every(({ value }) => Number.isFinite(value))).toBe(true);
    }),
    { numRuns: 3000 },
  );
});
