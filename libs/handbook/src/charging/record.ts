import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const chargingRecord = defineRecord("charging", {
  title: "Charging voltage",
  reads: "voltage while running, engine speed, system voltage, alternator or generator",
  formula: "within the band of the system at 1,500 to 2,000 rpm; a generator is never judged at idle",
  limits: {
    "charging.low-12": practice("least charging voltage, 12 V", 13.5, "V", [12.8, 14.2]),
    "charging.high-12": practice("greatest charging voltage, 12 V", 14.8, "V", [14.2, 15.5]),
    "charging.low-6": practice("least charging voltage, 6 V", 6.9, "V", [6.4, 7.2]),
    "charging.high-6": practice("greatest charging voltage, 6 V", 7.4, "V", [7.2, 8]),
    "charging.rpm-low": practice("charging is judged from this speed", 1500, "rpm", [800, 2500]),
    "charging.rpm-high": practice("charging is judged up to this speed", 2000, "rpm", [1500, 4000]),
  },
  source: commonPractice,
  consequence: "mechanical",
  over: "one-report",
  strength: "contradicts",
  cautions: ["battery", "carbon-monoxide"],
  outcomes: {
    charges: holds(
      "{volts} at {engineSpeed}: it charges{limitLow12ToHigh12, select, none {} other {; {limitLow12ToHigh12} is usual}}{limitLow6ToHigh6, select, none {} other {; {limitLow6ToHigh6} is usual}}.",
    ),
    "too-low": breaks(
      "repair",
      "{volts} at {engineSpeed}: it does not charge as it should{limitLow12ToHigh12, select, none {} other {; {limitLow12ToHigh12} is usual}}{limitLow6ToHigh6, select, none {} other {; {limitLow6ToHigh6} is usual}}.",
    ),
    "too-high": breaks(
      "repair",
      "{volts} at {engineSpeed}: it overcharges{limitLow12ToHigh12, select, none {} other {; {limitLow12ToHigh12} is usual}}{limitLow6ToHigh6, select, none {} other {; {limitLow6ToHigh6} is usual}}.",
    ),
    "range-covers": cannotTell(
      "{volts} at {engineSpeed}: too near the edge of what is usual to tell{limitLow12ToHigh12, select, none {} other {: {limitLow12ToHigh12}}}{limitLow6ToHigh6, select, none {} other {: {limitLow6ToHigh6}}}.",
    ),
    "generator-at-idle": cannotTell("{volts} at {engineSpeed}: a generator is not judged at idle."),
    "other-speed": cannotTell("{volts} at {engineSpeed}: not the speed charging is judged at."),
    "speed-unknown": cannotTell("{volts}: the engine speed is not noted."),
  },
});
