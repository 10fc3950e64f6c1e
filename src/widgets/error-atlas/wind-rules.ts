import {
  holdOutbound,
  holdOutboundByRule,
  maximumDrift,
  maximumDriftByRule,
  minutesToStation,
  minutesToStationByRule,
  trackError,
  trackErrorByOneInSixty,
} from "../../calc/index.ts";
import { printed } from "../../cells/printed.ts";
import { asSet } from "../figure-words.ts";
import { factOr, overWinds } from "./ranges.ts";
import type { AtlasRule, Values } from "./rule.ts";

/** One minute inbound on 360, turning right at 3 °/s. */
const holdIn = ({ tas, windFrom, windSpeed }: Values) =>
  ({
    inbound: 360,
    tas: tas!,
    windFrom: windFrom!,
    windSpeed: windSpeed!,
    inboundTime: 60,
    turns: "right",
    rate: 3,
  }) as const;

const ofHold = {
  caution:
    "A hold is protected only as it is published. Its speeds, its timing and your clearance go before any rule; ask if in doubt.",
  across: overWinds,
  at: ({ tas, windFrom }: Values) =>
    `inbound on 360 at ${asSet(tas!, "kt")} with the wind from ${printed(windFrom!, { unit: "deg", digits: 0, circle: true })}`,
  holds: { windSpeed: [0, 200], windFrom: [0, 360], tas: [20, 400] },
} as const;

/** Rules of wind, of holding and of beacons. */
export const windRules: readonly AtlasRule[] = [
  {
    key: "maximumDriftByRule",
    name: "maximumDriftByRule",
    result: { name: "Greatest drift", unit: "deg", digits: 1 },
    exact: ({ tas, windSpeed }) => maximumDrift(tas!, windSpeed!),
    lines: [
      {
        words: ["one in sixty", "1 in 60"],
        subject: "the rule",
        value: ({ tas, windSpeed }) => maximumDriftByRule(tas!, windSpeed!),
      },
    ],
    across: {
      range: (aircraft) => [0, Math.round((2 * factOr(aircraft, "cruise", 95)) / 3)],
      whose: ({ title }) => `winds up to two thirds of the ${title}’s cruising speed`,
    },
    at: ({ tas }) => `at ${asSet(tas!, "kt")}`,
    over: "too much drift",
    under: "too little drift",
    safe: undefined,
    why: "Neither sign is safe by itself: an error either way puts you as far to one side of the track as to the other.",
    leavesOut: "The wind stands square to the track; a steady wind.",
    holds: { windSpeed: [0, 300], tas: [10, 400] },
  },
  {
    key: "holdOutboundHeadingByRule",
    name: "holdOutboundByRule",
    result: { name: "Outbound heading", unit: "deg", digits: 0, circle: true },
    exact: (values) => holdOutbound(holdIn(values))?.heading ?? null,
    lines: [
      {
        words: ["three times", "three ×"],
        subject: "three times the drift",
        value: (values) => holdOutboundByRule({ ...holdIn(values), driftMultiple: 3 })?.heading ?? null,
      },
      {
        words: ["twice", "two ×"],
        subject: "twice the drift",
        value: (values) => holdOutboundByRule({ ...holdIn(values), driftMultiple: 2 })?.heading ?? null,
      },
    ],
    over: "right of it",
    under: "left of it",
    safe: undefined,
    why: "Neither sign is safe by itself: to one side the inbound turn ends short of the course, to the other it goes through it.",
    leavesOut:
      "Right-hand turns at 3 °/s without roll-in, one minute inbound on 360: give the wind as if the inbound course were north. Exact is the heading that closes the pattern. Authorities and schools differ on the multiple.",
    ...ofHold,
  },
  {
    key: "holdOutboundTimeByRule",
    name: "holdOutboundByRule",
    result: { name: "Time outbound from abeam", unit: "s", digits: 0 },
    exact: (values) => holdOutbound(holdIn(values))?.timeFromAbeam ?? null,
    lines: [
      {
        words: ["1 s a knot", "1 s a kt"],
        subject: "the rule",
        value: (values) => holdOutboundByRule(holdIn(values))?.time ?? null,
      },
    ],
    over: "too long",
    under: "too short",
    safe: "under",
    why: "It costs inbound seconds, while a leg too long can leave the area that is kept clear for the pattern.",
    leavesOut:
      "Right-hand turns at 3 °/s without roll-in, one minute inbound on 360: give the wind as if the inbound course were north. Exact is the time, from abeam the fix, that closes the pattern on its own heading.",
    ...ofHold,
  },
  {
    key: "trackErrorByOneInSixty",
    name: "trackErrorByOneInSixty",
    result: { name: "Track error", unit: "deg", digits: 1 },
    exact: ({ offset, distance }) => trackError(offset!, distance!),
    lines: [
      {
        words: ["one in sixty", "1 in 60"],
        subject: "the rule",
        value: ({ offset, distance }) => trackErrorByOneInSixty(offset!, distance!),
      },
    ],
    across: { range: () => [0, 10], whose: () => "up to 10 NM to one side" },
    at: ({ distance }) => `after ${asSet(distance!, "NM")}`,
    over: "too large",
    under: "too small",
    safe: undefined,
    why: "Neither sign is safe by itself: an angle taken too large brings you back across the track, one taken too small leaves you beside it.",
    leavesOut: "Geometry over a flat earth.",
    holds: { offset: [0, 1000], distance: [0.1, 1000] },
  },
  {
    key: "minutesToStationByRule",
    name: "minutesToStationByRule",
    result: { name: "Time to the station", unit: "min", digits: 1 },
    exact: ({ elapsed, bearingChange }) => minutesToStation(elapsed!, bearingChange!),
    lines: [
      {
        words: ["60 × t/angle", "by rule"],
        subject: "the rule",
        value: ({ elapsed, bearingChange }) => minutesToStationByRule(elapsed!, bearingChange!),
      },
    ],
    across: { range: () => [5, 45], whose: () => "changes of bearing from 5° to 45°" },
    at: ({ elapsed }) => `for a change that took ${asSet(elapsed!, "min")}`,
    over: "too long",
    under: "too short",
    safe: "over",
    why: "You arrive before you expected to, with fuel in hand.",
    leavesOut: "A steady heading across the bearing, still air, one speed; bearings are taken as exact.",
    holds: { bearingChange: [0.5, 89], elapsed: [0, 600] },
  },
];
