interface AtlasRuleEntry {
  /** Shown beside the figure's number: 'Bank for 3 °/s by a tenth and seven'. */
  readonly title: string;
  /** Names in quantities.ts: the one along the axis first, the tolerance of the error last. */
  readonly needs: readonly string[];
}

/** The rules of thumb of the error atlas by the word that chooses one; src/widgets/error-atlas measures each. */
export const atlasRules = {
  pressureAltitudeByRule: {
    title: "Pressure altitude by 30 ft for a hectopascal",
    needs: ["qnh", "altitudeTolerance"],
  },
  trueAirspeedByRule: {
    title: "True airspeed by 2 % for each thousand feet",
    needs: ["pressureAltitude", "cas", "isaDeviation", "speedTolerance"],
  },
  bankByTenthPlusSevenRule: {
    title: "Bank for 3 °/s by a tenth of the speed and seven",
    needs: ["tas", "bankTolerance"],
  },
  bankByFifteenPercentRule: { title: "Bank for 3 °/s by 15 % of the speed", needs: ["tas", "bankTolerance"] },
  rollOutLeadByRule: {
    title: "Roll-out lead by a half or a third of the bank",
    needs: ["bank", "tas", "rollRate", "headingTolerance"],
  },
  levelOffLeadByRule: {
    title: "Level-off lead by a tenth of the vertical speed",
    needs: ["verticalSpeed", "extraLoad", "reaction", "altitudeTolerance"],
  },
  verticalSpeedByRule: {
    title: "Vertical speed of a 3° path by five times the ground speed",
    needs: ["groundSpeed", "pathAngle", "verticalSpeedTolerance"],
  },
  descentDistanceByRule: {
    title: "Descent by 3 NM for each thousand feet",
    needs: ["height", "pathAngle", "distanceTolerance"],
  },
  settingErrorByRule: {
    title: "A wrong setting by 30 ft for a hectopascal",
    needs: ["qnh", "pressureSet", "altitudeTolerance"],
  },
  coldTemperatureErrorByRule: {
    title: "Cold air by 4 % for each 10 °C",
    needs: ["aerodromeTemperature", "height", "altitudeTolerance"],
  },
  rollOutHeadingByRule: {
    title: "Roll-out on the compass by the latitude",
    needs: ["heading", "bank", "latitude", "dip", "headingTolerance"],
  },
  maximumDriftByRule: { title: "Greatest drift by one in sixty", needs: ["windSpeed", "tas", "trackTolerance"] },
  holdOutboundHeadingByRule: {
    title: "Outbound heading by a multiple of the drift",
    needs: ["windSpeed", "windFrom", "tas", "headingTolerance"],
  },
  holdOutboundTimeByRule: {
    title: "Outbound time by a second for each knot",
    needs: ["windSpeed", "windFrom", "tas", "timeTolerance"],
  },
  trackErrorByOneInSixty: { title: "Track error by one in sixty", needs: ["offset", "distance", "trackTolerance"] },
  minutesToStationByRule: {
    title: "Minutes to a station by one in sixty",
    needs: ["bearingChange", "elapsed", "minutesTolerance"],
  },
} as const satisfies Readonly<Record<string, AtlasRuleEntry>>;

export type AtlasRuleName = keyof typeof atlasRules;
