import { type Hold, windTriangle } from "../../src/calc/index.ts";

const RADIAN = Math.PI / 180;

/**
 * A holding pattern flown in short straight pieces from the fix: turn, outbound leg, turn.
 *
 * @returns gap, NM, between where the second turn ends and where the inbound leg must begin; fromAbeam, the time
 *   since passing abeam the fix when the outbound leg ends
 */
export function flown(hold: Hold, leg: { readonly heading: number; readonly time: number }) {
  const { inbound, tas, windFrom, windSpeed, inboundTime, turns } = hold;
  const { heading: headingIn, groundSpeed } = windTriangle(inbound, tas, windFrom, windSpeed)!;
  const side = turns === "right" ? 1 : -1;
  const rate = Math.abs(hold.rate);
  const first = circle(side * (leg.heading - headingIn));
  let at = { time: 0, north: 0, east: 0 };
  let abeam = 0;
  const ahead = () => at.north * Math.cos(inbound * RADIAN) + at.east * Math.sin(inbound * RADIAN);
  const fly = (from: number, change: number, time: number) => {
    const pieces = 2000;
    for (let i = 0; i < pieces; i++) {
      const before = ahead();
      const heading = (from + ((i + 0.5) / pieces) * change) * RADIAN;
      const hours = time / pieces / 3600;
      at = {
        time: at.time + time / pieces,
        north: at.north + (tas * Math.cos(heading) - windSpeed * Math.cos(windFrom * RADIAN)) * hours,
        east: at.east + (tas * Math.sin(heading) - windSpeed * Math.sin(windFrom * RADIAN)) * hours,
      };
      const after = ahead();
      if (before > 0 && after <= 0) abeam = at.time + ((time / pieces) * after) / (before - after);
    }
  };
  fly(headingIn, side * first, first / rate);
  fly(leg.heading, 0, leg.time);
  const fromAbeam = at.time - abeam;
  fly(leg.heading, side * (360 - first), (360 - first) / rate);
  const start = (groundSpeed * inboundTime) / 3600;
  const north = at.north + start * Math.cos(inbound * RADIAN);
  const east = at.east + start * Math.sin(inbound * RADIAN);
  return { gap: Math.hypot(north, east), fromAbeam };
}

const circle = (angle: number) => ((angle % 360) + 360) % 360;
