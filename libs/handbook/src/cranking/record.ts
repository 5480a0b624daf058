import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const crankingRecord = defineRecord("cranking", {
  title: "Cranking voltage",
  reads: "voltage while the starter turns, system voltage",
  formula: "at least the figure of the system",
  limits: {
    "cranking.least-12": practice("least voltage while cranking, 12 V", 9.6, "V", [8.5, 10.5]),
    "cranking.least-6": practice("least voltage while cranking, 6 V", 4.8, "V", [4, 5.5]),
  },
  source: commonPractice,
  consequence: "mechanical",
  over: "one-report",
  strength: "contradicts",
  cautions: ["battery"],
  outcomes: {
    enough: holds(
      "{volts} while cranking{limitLeast12, select, none {} other {: at least {limitLeast12}}}{limitLeast6, select, none {} other {: at least {limitLeast6}}}.",
    ),
    "too-low": breaks(
      "repair",
      "{volts} while cranking{limitLeast12, select, none {} other {, under {limitLeast12}}}{limitLeast6, select, none {} other {, under {limitLeast6}}}. Battery, cables, grounds or starter: charge the battery, read at its posts, and test again.",
    ),
    "range-covers": cannotTell(
      "{volts} while cranking{limitLeast12, select, none {} other {: too near {limitLeast12} to tell}}{limitLeast6, select, none {} other {: too near {limitLeast6} to tell}}.",
    ),
  },
});
