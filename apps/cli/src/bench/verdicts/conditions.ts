import type { Finding } from "@evenhand/shared/finding";
import type { Known } from "./truth.ts";

type Conditions = NonNullable<Finding["conditions"]>;

const SPEED: Conditions = { gear: "fourth, direct", "lock-up": "none fitted", speed: 55 };

/** What is noted beside a finding: the ordinary way of doing it, the same on both days. */
const ORDINARY: Readonly<Record<string, Conditions>> = {
  "identity.odometer": { "odometer-digits": 5 },
  "electrics.volts-rest": { "charger-off": 3 },
  "electrics.volts-charging": { "engine-speed": 1700 },
  "electrics.vent-temperature": { "outside-temperature": 22 },
  "driveline.axle-turns": { "both-wheels": true },
  "steering.ball-joint-play": { loaded: true },
  "steering.ride-height": { "fuel-load": "half a tank, empty, pressures as listed" },
  "brakes.pedal-sink": { "seconds-held": 10 },
  "wheels.pressure": { "tire-cold": true },
  "engine.compression": { warm: true, "throttle-open": true },
  "engine.leak-down": { "test-pressure": 100 },
  "engine.vacuum": { height: 640, "engine-speed": 700 },
  "engine.oil-pressure-idle": { "oil-temperature": 88, "engine-speed": 700 },
  "engine.oil-pressure-2000": { "oil-temperature": 90, "engine-speed": 2000 },
  "engine.timing": { "engine-speed": 700 },
  "road.revolutions": SPEED,
  "road.indicated-revolutions": SPEED,
  "road.indicated-speed": { gear: "fourth, direct" },
  "road.gps-speed": { gear: "fourth, direct" },
  "road.vibration": { speed: 55 },
  "road.temperature-after-20": { "outside-temperature": 22 },
};

/** When the papers say they were written. */
const ENTRY_DATES: Readonly<Record<string, string>> = {
  "entry-1": "1979-06-11",
  "entry-2": "1994-09-02",
  "entry-3": "2021-04-20",
};

/** @example conditionsAt(theOdometer) // { "odometer-digits": 5 } */
export const conditionsAt = ({
  item,
  position,
}: Pick<Known, "item" | "position">): Conditions | undefined => {
  const date = item.id === "identity.odometer-on-papers" ? ENTRY_DATES[position] : undefined;
  return date === undefined ? ORDINARY[item.id] : { "entry-date": date };
};
