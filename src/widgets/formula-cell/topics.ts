import type { Topic } from "../../calc/index.ts";

/** A topic as the formula sheet heads it. */
export const topicTitles: Readonly<Record<Topic, string>> = {
  units: "Units and angles",
  atmosphere: "Atmosphere",
  airspeed: "Airspeed",
  turns: "Turns",
  leads: "Leads",
  vertical: "Climb and descent",
  altimetry: "Altimetry",
  compass: "Compass",
  wind: "Wind",
  holding: "Holding",
  radio: "Beacons and courses",
  vestibular: "What the inner ear feels",
  panel: "Instruments and attitude",
};
