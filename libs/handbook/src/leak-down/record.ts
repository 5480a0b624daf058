import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const leakDownRecord = defineRecord("leak-down", {
  title: "Pattern of leak-down",
  reads: "leak-down by cylinder, the test pressure, and where the air escapes",
  formula:
    "each cylinder against the bands, which are for 100 psi; the median of four cylinders or more is printed beside it and judges nothing",
  limits: {
    "leak-down.good": practice("leak-down under this is good, at 100 psi", 10, "%", [2, 30]),
    "leak-down.poor": practice("leak-down over this is poor, at 100 psi", 20, "%", [5, 50]),
    "leak-down.pressure": practice("test pressure the leak-down bands are for", 100, "psi", [60, 120]),
  },
  source: commonPractice,
  consequence: "mechanical",
  over: "one-report",
  strength: "contradicts",
  cautions: ["leak-down-air"],
  outcomes: {
    good: holds(
      "Worst cylinder {worstCylinder} leaks {worst}: good.{median, select, none {} other { The median is {median}.}}",
    ),
    worn: holds(
      "Worst cylinder {worstCylinder} leaks {worst}: worn, not poor.{median, select, none {} other { The median is {median}.}} Air escapes by: {escape}.",
    ),
    "good-or-worn": holds(
      "Worst cylinder {worstCylinder} leaks {worst}: good or worn, not poor.{median, select, none {} other { The median is {median}.}}",
    ),
    poor: breaks(
      "worth",
      "Worst cylinder {worstCylinder} leaks {worst}: poor.{median, select, none {} other { The median is {median}.}} Air escapes by: {escape}.",
    ),
    "range-covers": cannotTell(
      "Worst cylinder {worstCylinder} leaks {worst}: worn or poor. Air escapes by: {escape}.",
    ),
    "other-pressure": cannotTell(
      "Worst cylinder {worstCylinder} leaks {worst}{median, select, none {} other {, the median is {median}}}; the bands are for {limitPressure}, and the test was not at it.",
    ),
    "too-few": cannotTell("No cylinder's leak-down is known."),
  },
});
