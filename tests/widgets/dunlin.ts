import type { Facts } from "../../src/cells/known.ts";

/** An aircraft sheet as figures read it. */
export const dunlin: Facts = {
  title: "Dunlin",
  owner: "Dunlin, Saltmarsh Flying Club",
  facts: {
    bankLimit: { value: 30, unit: "deg" },
    stall: { value: 47, unit: "kt" },
    neverExceed: { value: 158, unit: "kt" },
  },
};
