import { describe, expect, it } from "vitest";
import { estimate } from "@evenhand/measurement/estimate";
import { charging } from "../charging/index.ts";
import { cranking } from "../cranking/index.ts";
import { exactly } from "../interval/index.ts";
import { oilPressure } from "../oil-pressure/index.ts";
import { vacuum } from "./index.ts";
import type { VacuumInput } from "./index.ts";

const idle: VacuumInput = {
  vacuum: exactly(18),
  height: exactly(0),
  needle: "steady",
  timing: "right",
  cam: "stock",
};
const at = (inHg: number, more: Partial<VacuumInput> = {}) =>
  vacuum({ ...idle, vacuum: exactly(inHg), ...more }).reason;

describe("vacuum", () => {
  it.each([
    [16.9, "low"],
    [17, "in-band"],
    [21, "in-band"],
    [21.1, "high"],
  ])("%f inHg at the sea: %s", (inHg, reason) => {
    expect(at(inHg)).toBe(reason);
  });

  it("adds 1 inHg for 1,000 ft, and its uncertainty", () => {
    expect(at(12, { height: exactly(5000) })).toBe("in-band");
    expect(at(11.9, { height: exactly(5000) })).toBe("low");
    const { figures } = vacuum({ ...idle, vacuum: estimate(12, 0.3), height: estimate(5000, 400) });
    expect(figures.corrected?.value).toBeCloseTo(17, 12);
    expect(figures.corrected?.standardUncertainty).toBeCloseTo(0.5, 12);
    expect(
      vacuum({ ...idle, vacuum: exactly(12), height: exactly(5000) }, { "vacuum.height": 0.9 }).reason,
    ).toBe("low");
  });

  it("looks for other reasons before it calls an engine low", () => {
    expect(at(10, { timing: "late", cam: "unknown" })).toBe("late-timing");
    expect(at(10, { timing: "unknown", cam: "unknown" })).toBe("timing-unknown");
    expect(at(10, { cam: "unknown" })).toBe("cam-unknown");
    expect(at(18, { cam: "unknown" })).toBe("in-band");
    expect(at(10, { cam: "other", height: undefined })).toBe("cam-not-stock");
    expect(at(18, { needle: "dropping", cam: "unknown" })).toBe("cam-unknown");
  });
});

const hot = { pressure: exactly(20), engineSpeed: exactly(2000), oilTemperature: 80 };

describe("oilPressure", () => {
  it("passes at 10 psi for 1,000 rpm and fails under it, with the oil at 80 °C or more", () => {
    expect(oilPressure(hot).reason).toBe("enough");
    expect(oilPressure({ ...hot, pressure: exactly(19.99) }).reason).toBe("low");
    expect(oilPressure({ ...hot, oilTemperature: 79.9 }).reason).toBe("not-hot");
  });

  it("counts the uncertainty of the speed, except against the maker's own figure", () => {
    const wide = { ...hot, pressure: exactly(21), engineSpeed: estimate(2000, 200) };
    expect(oilPressure(wide).reason).toBe("range-covers");
    expect(oilPressure({ ...wide, makersLeast: 20 }).reason).toBe("enough");
    expect(oilPressure({ ...hot, makersLeast: 20 }).limits?.map(({ id }) => id)).toEqual([
      "oil-pressure.hot",
    ]);
    expect(oilPressure(hot).limits?.map(({ id }) => id)).toEqual([
      "oil-pressure.per-1000-rpm",
      "oil-pressure.hot",
    ]);
  });
});

const running = (volts: number, more: Partial<Parameters<typeof charging>[0]> = {}) =>
  charging({ volts: exactly(volts), engineSpeed: 1800, system: 12, machine: "alternator", ...more }).reason;

describe("charging", () => {
  it.each([
    [12, 13.49, "too-low"],
    [12, 13.5, "charges"],
    [12, 14.8, "charges"],
    [12, 14.81, "too-high"],
    [6, 6.89, "too-low"],
    [6, 6.9, "charges"],
    [6, 7.4, "charges"],
    [6, 7.41, "too-high"],
  ] as const)("%i V system at %f V: %s", (system, volts, reason) => {
    expect(running(volts, { system })).toBe(reason);
  });

  it.each([
    [1499, "alternator", "other-speed"],
    [1500, "alternator", "charges"],
    [2000, "alternator", "charges"],
    [2001, "alternator", "other-speed"],
    [1499, "generator", "generator-at-idle"],
    [1500, "generator", "charges"],
    [2001, "generator", "other-speed"],
  ] as const)("at %i rpm with a(n) %s: %s", (engineSpeed, machine, reason) => {
    expect(running(14, { engineSpeed, machine })).toBe(reason);
  });
});

describe("cranking", () => {
  it.each([
    [12, 9.6, "enough"],
    [12, 9.59, "too-low"],
    [6, 4.8, "enough"],
    [6, 4.79, "too-low"],
  ] as const)("%i V system at %f V: %s", (system, volts, reason) => {
    expect(cranking({ volts: exactly(volts), system }).reason).toBe(reason);
  });
});
