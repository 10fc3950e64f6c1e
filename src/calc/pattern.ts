/**
 * A right-hand holding pattern seen from above with its inbound course pointing along. Speeds in any one unit,
 * angles in radians, distances in that unit times seconds.
 */
export interface Pattern {
  readonly speed: number;
  /** Of turn, radians a second. */
  readonly rate: number;
  /** Velocity of the air along the inbound course, and across it to the right. */
  readonly windAlong: number;
  readonly windAcross: number;
  /** Inbound heading minus inbound course. */
  readonly correction: number;
  readonly inboundDistance: number;
}

/** An outbound leg: its heading from the inbound course, in radians, and its time from wings level. */
export interface Leg {
  readonly heading: number;
  readonly time: number;
}

/**
 * The outbound leg that closes the pattern: V e t + w t = D, where D undoes the inbound leg and the drift of both
 * turns. Squaring |D − w t| = V t leaves (V² − w²) t² + 2 (D·w) t − D² = 0, whose one positive root is the time.
 * The wind is weaker than the speed.
 */
export function closingLeg({ speed, rate, windAlong, windAcross, inboundDistance }: Pattern): Leg {
  const turning = (2 * Math.PI) / rate;
  const along = -(inboundDistance + windAlong * turning);
  const across = -windAcross * turning;
  const dot = along * windAlong + across * windAcross;
  const margin = speed ** 2 - windAlong ** 2 - windAcross ** 2;
  const time = (Math.sqrt(dot ** 2 + margin * (along ** 2 + across ** 2)) - dot) / margin;
  return { time, heading: Math.atan2(across - windAcross * time, along - windAlong * time) };
}

/**
 * How long before wings level the aeroplane passed abeam the fix; negative where it passes abeam later, on the leg,
 * and 0 where it never does.
 */
export function abeamDuringTurn(pattern: Pattern, leg: Leg): number {
  const { speed, rate, windAlong, correction } = pattern;
  const turn = positiveAngle(leg.heading - correction);
  const along = (turned: number) =>
    (speed * (Math.sin(correction + turned) - Math.sin(correction)) + windAlong * turned) / rate;
  const atWingsLevel = along(turn);
  if (atWingsLevel >= 0) {
    const outboundSpeed = -(speed * Math.cos(leg.heading) + windAlong);
    return outboundSpeed > 0 ? -atWingsLevel / outboundSpeed : 0;
  }
  const farthest = Math.acos(-windAlong / speed) - correction;
  const passed = crossing(along, farthest, turn);
  return (turn - passed) / rate;
}

/** Where a function that is positive before and negative behind passes zero once between, by halving. */
function crossing(f: (x: number) => number, before: number, behind: number): number {
  let [low, high] = [before, behind];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (f(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function positiveAngle(angle: number): number {
  const circle = 2 * Math.PI;
  return ((angle % circle) + circle) % circle;
}
