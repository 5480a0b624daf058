import type { AdmissionState } from "@evenhand/shared/http/calendars";

export const decisions = ["admit", "refuse", "suspend"] as const;
export type Decision = (typeof decisions)[number];

/** What makes a difference now: nobody is admitted twice, and only who is admitted is suspended. */
export const possibleDecisions = (state: AdmissionState): readonly Decision[] => {
  if (state === "admitted") return ["suspend"];
  return state === "applied" ? ["admit", "refuse"] : ["admit"];
};
