import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  arcLead,
  convert,
  courseHalfWidth,
  groundDistance,
  interceptLead,
  minutesToStation,
  minutesToStationByRule,
  pathHeight,
  slantRange,
  trackError,
  trackErrorByOneInSixty,
  trackMadeGood,
} from "../../src/calc/index.ts";
import { between } from "./evenly.ts";

const RADIAN = Math.PI / 180;

describe("trackError", () => {
  test("is the drift of a track that leaves its course at the start", () => {
    fc.assert(
      fc.property(between(-60, 60), between(1, 100), (angle, distance) => {
        expect(trackError(distance * Math.tan(angle * RADIAN), distance)).toBeCloseTo(angle, 9);
      }),
    );
    const { track } = trackMadeGood(0, 90, 270, 10);
    expect(trackError(10, 90)).toBeCloseTo(track, 9);
  });

  test("is under the rule by one part in twenty for a small angle", () => {
    expect(trackErrorByOneInSixty(1, 60)).toBe(1);
    expect(trackErrorByOneInSixty(-4, 30)).toBe(-8);
    expect(trackErrorByOneInSixty(0.001, 60) / trackError(0.001, 60)).toBeCloseTo((60 * Math.PI) / 180, 6);
  });
});

describe("slantRange", () => {
  test("is undone by groundDistance", () => {
    fc.assert(
      fc.property(between(0.1, 200), between(0, 40_000), (distance, height) => {
        expect(groundDistance(slantRange(distance, height), height)).toBeCloseTo(distance, 6);
      }),
    );
  });

  test("overhead is the height, 0.987 NM at 6,000 ft", () => {
    expect(slantRange(0, 6000)).toBeCloseTo(convert(6000, "ft", "NM"), 12);
    expect(slantRange(0, 6000).toFixed(3)).toBe("0.987");
  });

  // 3, 4 and 5 miles.
  test("closes a right-angled triangle", () => {
    const height = convert(3, "NM", "ft");
    expect(slantRange(4, height)).toBeCloseTo(5, 9);
    expect(groundDistance(5, height)).toBeCloseTo(4, 9);
  });
});

describe("groundDistance", () => {
  test("is nothing overhead and has no answer below the height", () => {
    const up = slantRange(0, 6000);
    expect(groundDistance(up, 6000)).toBe(0);
    expect(groundDistance(up - 1e-9, 6000)).toBeNull();
  });
});

describe("minutesToStation", () => {
  // Flown t across at a distance d leaves a bearing change of arctan (t / d).
  test("is the distance abeam in minutes of flight", () => {
    fc.assert(
      fc.property(between(1, 60), between(0.5, 20), (abeam, elapsed) => {
        const change = Math.atan2(elapsed, abeam) / RADIAN;
        expect(minutesToStation(elapsed, change)).toBeCloseTo(abeam, 8);
      }),
    );
  });

  test("is under the rule by one part in twenty for a small angle", () => {
    expect(minutesToStationByRule(2, 10)).toBe(12);
    expect(minutesToStationByRule(2, 0.01) / minutesToStation(2, 0.01)).toBeCloseTo((60 * Math.PI) / 180, 6);
  });
});

describe("interceptLead", () => {
  // The turn begins at distance d on a bearing the lead off the course; it must end on the course, along it.
  test("begins a turn that ends on the course", () => {
    fc.assert(
      fc.property(between(0.2, 2), between(5, 30), between(1, 150), (radius, distance, angle) => {
        const lead = interceptLead(radius, distance, angle)!;
        const across = distance * Math.sin(lead * RADIAN);
        let y = across;
        const pieces = 2000;
        for (let i = 0; i < pieces; i++) {
          const left = angle * (1 - (i + 0.5) / pieces) * RADIAN;
          y -= ((radius * angle * RADIAN) / pieces) * Math.sin(left);
        }
        expect(Math.abs(y)).toBeLessThan(1e-6 * Math.max(1, across));
      }),
    );
  });

  test("at a right angle, which it takes unless told otherwise, is a radius across", () => {
    expect(interceptLead(0.5, 10)).toBeCloseTo(Math.asin(0.05) / RADIAN, 9);
    expect(interceptLead(0.5, 10, 0)).toBe(0);
  });

  test("comes to sixty radii over the distance, for a small angle, by one part in twenty", () => {
    expect((60 * 0.01 * (1 - Math.cos(60 * RADIAN))) / 10 / interceptLead(0.01, 10, 60)!).toBeCloseTo(
      (60 * Math.PI) / 180,
      6,
    );
  });

  test("has no answer where the turn is wider than the distance", () => {
    expect(interceptLead(1, 1.0001)).toBeCloseTo(89.19, 2);
    expect(interceptLead(1.001, 1)).toBeNull();
  });
});

describe("arcLead", () => {
  test.each(["outside", "inside"] as const)("from %s begins a circle that touches the radial and the arc", (from) => {
    fc.assert(
      fc.property(between(5, 20), between(0.2, 2), (arc, radius) => {
        const lead = arcLead(arc, radius, from)!;
        const begins = from === "outside" ? arc + lead : arc - lead;
        // The circle's centre lies a radius beside the radial where the turn begins.
        const centre = Math.hypot(begins, radius);
        expect(centre).toBeCloseTo(from === "outside" ? arc + radius : arc - radius, 9);
      }),
    );
  });

  test("comes from outside unless told otherwise, and from inside is the longer", () => {
    expect(arcLead(10, 0.5)).toBe(arcLead(10, 0.5, "outside"));
    expect(arcLead(10, 0.5, "inside")!).toBeGreaterThan(arcLead(10, 0.5)!);
    expect(arcLead(10, 0)).toBe(0);
  });

  test("has no answer from inside where the circle is wider than the arc", () => {
    expect(arcLead(2, 1, "inside")).toBeCloseTo(2, 9);
    expect(arcLead(2, 1.001, "inside")).toBeNull();
    expect(arcLead(2, 1.001, "outside")).not.toBeNull();
  });
});

describe("pathHeight", () => {
  test("climbs 318 ft a mile at 3°, from its reference", () => {
    expect(pathHeight(1).toFixed(0)).toBe("318");
    expect(pathHeight(0, 3, 50)).toBe(50);
    expect(pathHeight(4, 3, 50) - pathHeight(1, 3, 50)).toBeCloseTo(3 * pathHeight(1), 9);
  });

  test("stands 55 ft above 300 ft a mile at 3 NM", () => {
    expect((pathHeight(3) - 900).toFixed(0)).toBe("55");
  });

  test("meets the tangent of its angle", () => {
    expect(pathHeight(2, 45, -10)).toBeCloseTo(convert(2, "NM", "ft") - 10, 6);
  });
});

describe("courseHalfWidth", () => {
  test("meets the tangent of its half angle, in feet", () => {
    expect(courseHalfWidth(45, 1)).toBeCloseTo(convert(1, "NM", "ft"), 6);
    expect(courseHalfWidth(2.5, 4).toFixed(0)).toBe("1061");
    expect(courseHalfWidth(2.5, 0)).toBe(0);
  });
});
