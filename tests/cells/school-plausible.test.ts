import { expect, test } from "vitest";
import { builtInSchool } from "../../src/cells/course.ts";
import { checkEntries, entryOf, fieldNamed, readEntry, valuesOf } from "../../src/cells/school/index.ts";

const entries = Object.fromEntries([...valuesOf(builtInSchool!)].map(([id, value]) => [id, entryOf(value)]));
const found = (changes: Record<string, string>) => checkEntries({ ...entries, ...changes }).findings;
const phase = (name: string) => `aircraft.phases.${name}`;

test("checkEntries finds nothing wrong with the Dunlin at Saltmarsh", () => {
  expect(found({})).toEqual([]);
});

test.each([
  ["aircraft.approach", { "aircraft.approach": "47" }],
  ["aircraft.cruiseIas", { "aircraft.cruiseIas": "70" }],
  ["aircraft.neverExceed", { "aircraft.neverExceed": "92" }],
  ["aircraft.neverExceed", { "aircraft.descent": "158" }],
  // 1.2 times 47 kt is 56.4 kt.
  ["aircraft.climb", { "aircraft.climb": "56" }],
  [phase("slowCruise.speed"), { [phase("slowCruise.speed")]: "56" }],
  // The needle's 92 kt at 2,400 ft are 95.3 kt true: 6 per cent more is 101 kt.
  ["aircraft.cruise", { "aircraft.cruise": "102" }],
  // 47 kt / √cos 60° is 66.5 kt.
  ["aircraft.bankLimit", { "aircraft.bankLimit": "60", "aircraft.approach": "66" }],
  ["aircraft.bankLimit", { "aircraft.bankLimit": "15" }],
  ["aircraft.climbBankLimit", { "technique.climbTurnBank": "21" }],
  ["aircraft.rollInRate", { "aircraft.rollInRate": "1" }],
  // 1,000 ft/min at 35 kt: sin 16.4° = 9.87/35.
  ["aircraft.descentRate", { "aircraft.descentRate": "1100", "aircraft.descent": "40" }],
  [phase("approach.verticalSpeed"), { [phase("approach.verticalSpeed")]: "370" }],
  [phase("climbHigh.verticalSpeed"), { [phase("climbHigh.verticalSpeed")]: "0" }],
  [phase("climb.verticalSpeed"), { [phase("climbMiddle.verticalSpeed")]: "601" }],
  [phase("climbMiddle.altitude"), { [phase("climbMiddle.altitude")]: "0" }],
  [phase("climbHigh.altitude"), { "aircraft.cruiseAltitude": "8500", "aircraft.cruise": "104" }],
  ["aircraft.altitudeTo", { "aircraft.altitudeTo": "7000" }],
  ["place.floor", { "place.floor": "20" }],
  ["place.dip", { "place.dip": "-67" }],
  ["place.latitude", { "place.latitude": "", "place.dip": "" }],
  ["technique.fasterPower", { "technique.fasterAttitude": "150" }],
])("checkEntries finds fault at %s where %j", (field, changes) => {
  const findings = found(changes);
  expect(findings.map((finding) => finding.field)).toContain(field);
  for (const { message, mend } of findings) expect(`${message} ${mend}`).toMatch(/^\S.*[.!] \S.*\.$/);
});

test.each([
  [{ "aircraft.climb": "57" }],
  [{ "aircraft.cruise": "100" }],
  [{ "aircraft.bankLimit": "60", "aircraft.approach": "67" }],
  [{ "aircraft.rollInRate": "1.25" }],
  [{ "place.latitude": "-52", "place.dip": "-67" }],
  // The field is far from a dipole's in southern Africa: 26° south has a dip near −62°.
  [{ "place.latitude": "-26", "place.dip": "-62" }],
])("checkEntries lets %j pass", (changes) => {
  expect(found(changes)).toEqual([]);
});

test("checkEntries lists every entry that is missing, and throws at none", () => {
  const { school, findings } = checkEntries({});
  expect(school).toBeUndefined();
  expect(findings.filter(({ message }) => /nothing/.test(message)).length).toBeGreaterThan(50);
});

const altitude = fieldNamed("aircraft.cruiseAltitude")!;
const load = fieldNamed("aircraft.extraLoad")!;
const variation = fieldNamed("place.variation")!;

test.each([
  [altitude, "2,400", 2400],
  [altitude, "2 400 ft", 2400],
  [altitude, "2400.5", 2400.5],
  [altitude, " 1 km ", 3280.8399],
  [load, "0,05", 0.05],
  [load, ".05 g", 0.05],
  [variation, "−3°", -3],
  [variation, "-3", -3],
  [variation, "+3 deg", 3],
])("readEntry takes %o written as %j for %d", (field, text, value) => {
  expect(readEntry(field, text)).toEqual({ value });
});

test.each([
  "",
  "high",
  "2400 kt",
  "24.00.1",
  "0x960",
  "1e3",
  "2,4000",
  "12,345,6",
  "--5",
  "5 5",
  "9".repeat(400),
  "<b>",
])("readEntry refuses the altitude %j in words", (text) => {
  expect(readEntry(altitude, text)).toMatchObject({
    message: expect.stringMatching(/^Cruise altitude: /),
    mend: expect.stringMatching(/\.$/),
  });
});

test("readEntry lets no sign pass that can't be seen", () => {
  const title = fieldNamed("aircraft.title")!;
  for (const sign of ["\u0000", "\u202e", "\u2066", "\ufeff", "\ud800", "\u2028"])
    expect(readEntry(title, `Te${sign}al`)).toHaveProperty("message");
  expect(readEntry(title, "Teal 🦆")).toEqual({ value: "Teal 🦆" });
});
