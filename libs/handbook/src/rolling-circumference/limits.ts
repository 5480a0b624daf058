import { practice } from "../limit-record/index.ts";

/** What a tire is taken to roll by its size, where it was not measured. */
export const rollingLimits = {
  "tire.rolling-share": practice("rolling circumference over pi times diameter", 0.97, "1", [0.93, 1]),
  "tire.rolling-tolerance": practice(
    "half width of the rolling circumference's range, as a share",
    0.015,
    "1",
    [0.002, 0.05],
  ),
};
