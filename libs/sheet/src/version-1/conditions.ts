import type { ConditionKind } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";

/** Circumstances a finding notes beside its answer where the item asks for them. */
export const conditions: ConditionKind[] = [
  { id: "warm", words: words("engine warm"), otherwise: words("engine cold"), ask: "yes-no" },
  {
    id: "throttle-open",
    words: words("throttle held open"),
    otherwise: words("throttle not held open"),
    ask: "yes-no",
  },
  { id: "charger-off", words: words("hours off a charger"), ask: "number", unit: "h" },
  {
    id: "height",
    words: words("height above the sea", undefined, ["altitude", "elevation"]),
    ask: "number",
    unit: "ft",
  },
  { id: "oil-temperature", words: words("oil temperature"), ask: "number", unit: "degC" },
  { id: "test-pressure", words: words("test pressure"), ask: "number", unit: "psi" },
  { id: "engine-speed", words: words("engine speed"), ask: "number", unit: "rpm" },
  { id: "gear", words: words("gear"), ask: "text" },
  { id: "lock-up", words: words("converter lock-up or overdrive state"), ask: "text" },
  { id: "entry-date", words: words("date of the entry"), ask: "text" },
  { id: "odometer-digits", words: words("digits before the tenths"), ask: "number", unit: "1" },
  {
    id: "fuel-load",
    words: words("fuel, load and tire pressures", "fuel, load and tyre pressures"),
    ask: "text",
  },
  {
    id: "both-wheels",
    words: words("both wheels turned together"),
    otherwise: words("one wheel turned, the other held"),
    ask: "yes-no",
  },
  {
    id: "loaded",
    words: words("joint loaded as its design asks"),
    otherwise: words("joint not loaded as its design asks"),
    ask: "yes-no",
  },
  { id: "speed", words: words("road speed"), ask: "number", unit: "mph" },
  { id: "outside-temperature", words: words("outside temperature"), ask: "number", unit: "degC" },
  {
    id: "tire-cold",
    words: words("tires cold", "tyres cold"),
    otherwise: words("tires warm", "tyres warm"),
    ask: "yes-no",
  },
  { id: "foil-thickness", words: words("stated thickness of the foil"), ask: "number", unit: "um" },
  { id: "step-depth", words: words("stated depth of the step"), ask: "number", unit: "mm" },
  { id: "seconds-held", words: words("seconds held"), ask: "number", unit: "s" },
];
