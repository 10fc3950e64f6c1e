/** Why a formula may have no solution, where it may have none: ends a sentence that begins 'no solution: '. */
export const noSolution: Readonly<Record<string, string>> = {
  windTriangle: "the wind is too strong for this course to be held",
  maximumDrift: "the wind is stronger than the true airspeed",
  holdOutbound: "in this wind the inbound course cannot be held, or the wind is as strong as the true airspeed",
  holdOutboundByRule: "in this wind the inbound course cannot be held",
  groundDistance: "the slant range is less than the height",
  interceptLead: "the turn needs more room than there is to the station",
  arcLead: "the turn does not fit inside the arc",
};
