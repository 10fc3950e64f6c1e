import { beforeEach, expect, test, vi } from "vitest";
import { builtIn, builtInSchool } from "../../src/cells/course.ts";
import { schoolFile } from "../../src/cells/school/index.ts";
import { answersFor, keptFrom } from "../../src/cells/school/kept.ts";
import { givenWith } from "../../src/cells/school/own-given.ts";
import { forgetSchool, keepSchool, keptSchool, onSchoolElsewhere } from "../../src/records/school.ts";

const school = builtInSchool!;
const kept = new Map<string, string>();

beforeEach(() => {
  kept.clear();
  vi.stubGlobal("localStorage", {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  });
  vi.stubGlobal("window", new EventTarget());
});

test("keptSchool gives back what keepSchool kept, until forgetSchool", () => {
  const text = schoolFile(school);
  expect(keptSchool()).toBeUndefined();
  expect(keepSchool(school, text)).toBe(true);
  expect(keptSchool()).toEqual({ version: 1, text, school: JSON.parse(JSON.stringify(school)) });
  expect(forgetSchool()).toBe(true);
  expect(keptSchool()).toBeUndefined();
});

test("keptSchool takes nothing that isn't whole, whatever storage holds", () => {
  keepSchool(school, "x");
  const whole = kept.get("hoodwork.school")!;
  const cuts = Array.from({ length: 50 }, (_, i) => whole.slice(0, Math.floor((whole.length * i) / 50) + 1));
  const infinite = whole.replace('"value":47', '"value":1e999');
  for (const json of [...cuts, "null", "5", "{}", whole.replace('"version":1', '"version":2'), infinite]) {
    kept.set("hoodwork.school", json);
    expect(keptSchool()).toBe("unreadable");
    expect(keptFrom(json)).toBeUndefined();
  }
});

test("keepSchool, keptSchool and forgetSchool bear a browser that refuses storage", () => {
  const refuse = (): never => {
    throw new DOMException("refused", "SecurityError");
  };
  vi.stubGlobal("localStorage", { getItem: refuse, setItem: refuse, removeItem: refuse });
  expect([keptSchool(), keepSchool(school, "x"), forgetSchool()]).toEqual([undefined, false, false]);
});

test("onSchoolElsewhere hears of another tab's school alone, until it is ended", () => {
  const listener = vi.fn();
  const end = onSchoolElsewhere(listener);
  const tell = (key: string | null) =>
    window.dispatchEvent(Object.assign(new Event("storage"), { key, storageArea: localStorage }));
  tell("hoodwork.school");
  tell("hoodwork.settings");
  tell(null);
  end();
  tell("hoodwork.school");
  expect(listener).toHaveBeenCalledTimes(2);
});

test("answersFor wants every fact of the page, each in its unit", () => {
  const { stall, ...others } = school.aircraft.facts;
  const withStall = (fact: object) => ({ ...school, aircraft: { ...school.aircraft, facts: { ...others, ...fact } } });
  expect(answersFor(school, builtIn)).toBe(true);
  expect(answersFor(withStall({}), builtIn)).toBe(false);
  expect(answersFor(withStall({ stall: { ...stall, unit: "m/s" } }), builtIn)).toBe(false);
  expect(answersFor(withStall({ stall: { value: "47", unit: "kt" } }), builtIn)).toBe(false);
  expect(answersFor(school, {})).toBe(true);
});

test("givenWith gives a default that follows a fact the school's value, and widens the range to hold it", () => {
  const tas = { name: "tas", quantity: "tas", label: "True airspeed", unit: "kt", value: 95, step: 5, digits: 0 };
  const given = [
    { ...tas, from: 60, to: 120, circle: false, follows: "aircraft.cruise" },
    { ...tas, name: "slow", from: 60, to: 120, circle: false },
  ];
  const cruise = (value: number) => ({
    aircraft: { ...school.aircraft, facts: { ...school.aircraft.facts, cruise: { value, unit: "kt" } } },
  });
  expect(givenWith(given, cruise(140))).toEqual([{ ...given[0], value: 140, to: 140 }, given[1]]);
  expect(givenWith(given, cruise(95))).toEqual(given);
});
