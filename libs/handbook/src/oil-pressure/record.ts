import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const oilPressureRecord = defineRecord("oil-pressure", {
  title: "Oil pressure",
  reads: "oil pressure, engine speed and oil temperature, or the maker's least figure",
  formula: "10 psi for each 1,000 rpm with the oil hot; the maker's figure goes before it",
  limits: {
    "oil-pressure.per-1000-rpm": practice("oil pressure for each 1,000 rpm, hot", 10, "psi", [3, 20]),
    "oil-pressure.hot": practice("oil at this temperature counts as hot", 80, "degC", [60, 110]),
  },
  source: commonPractice,
  consequence: "mechanical",
  over: "one-report",
  strength: "hint",
  cautions: ["carbon-monoxide"],
  outcomes: {
    enough: holds(
      "{pressure} hot at {engineSpeed}{makersLeast, select, none {} other {; the maker's least is {makersLeast}}}{limitPer1000Rpm, select, none {} other {; {limitPer1000Rpm} for each 1,000 rpm makes {least}}}.",
    ),
    low: breaks(
      "worth",
      "{pressure} hot at {engineSpeed}; {limitPer1000Rpm} for each 1,000 rpm makes {least}. The maker's figure decides.",
    ),
    "under-makers": breaks("worth", "{pressure} hot at {engineSpeed}, under the maker's {least}."),
    "range-covers": cannotTell("{pressure} hot at {engineSpeed}: too near {least} to tell."),
    "not-hot": cannotTell("{pressure} at {engineSpeed}, but the oil was at {oilTemperature}: not hot."),
    "temperature-unknown": cannotTell("{pressure} at {engineSpeed}: the oil's temperature is not noted."),
  },
});
