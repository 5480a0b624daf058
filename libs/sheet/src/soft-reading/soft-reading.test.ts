import { describe, expect, it } from "vitest";
import type { AnswerOf } from "@evenhand/shared/answer";
import type { Instrument } from "@evenhand/shared/report";
import { compileSheet } from "../compile-sheet/index.ts";
import { readSide } from "../reading-side/index.ts";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { firmSide, isScattered, isSoftInstrument } from "./index.ts";

const found = compileSheet(sheetVersion1).items.get("engine.compression")?.item.reading;
if (found === undefined) throw new Error("the sheet reads no compression");
const spec = found;
const { unit, instrument } = spec;
const typical = 150;
const ordinary = instrument.accuracy.absolute + instrument.accuracy.share * typical;

const reading = (...values: number[]): AnswerOf<"reading"> => ({
  kind: "reading",
  unit,
  values: values.map((value) => ({ value })),
});
const gauge = (times: number, steps = times): Instrument => ({
  id: "gauge",
  name: "a gauge",
  accuracy: { absolute: { value: times * ordinary, unit }, share: 0 },
  resolution: { value: steps * instrument.resolution, unit },
});
const side = (with_: Instrument | undefined, ...values: number[]) =>
  readSide(reading(...values), spec, with_);

describe("an instrument", () => {
  it.each([
    ["just three times the ordinary one", gauge(3), false],
    ["a little worse", gauge(3.1), true],
    ["accurate to anything", { id: "x", name: "x", accuracy: { share: 1 } }, true],
    ["as accurate as the ordinary one, in steps a hundred times as wide", gauge(1, 100), true],
    ["of which nothing is said", { id: "x", name: "x" }, false],
    ["that nobody named", undefined, false],
  ])("%s", (_name, named, soft) => {
    expect(isSoftInstrument(side(named, typical), spec)).toBe(soft);
  });
});

describe("repeats", () => {
  it("are scattered where they lie farther apart than three times the ordinary scatter", () => {
    expect(isScattered(reading(0.85 * typical, 1.15 * typical), spec)).toBe(true);
    expect(isScattered(reading(typical, typical + 1), spec)).toBe(false);
    expect(isScattered(reading(typical), spec)).toBe(false);
  });

  it("at named spots may rightly differ", () => {
    const { values } = reading(100, 150);
    const spots = values.map((value, index) => ({ ...value, spot: `spot-${index}` }));
    expect(isScattered({ ...reading(), values: spots }, spec)).toBe(false);
  });
});

describe("a side taken for firm", () => {
  it("is itself where nothing about it is worse than three times the ordinary", () => {
    for (const read of [side(gauge(3), typical), side(undefined, typical)])
      expect(firmSide(read, spec)).toBe(read);
  });

  it("has three times the ordinary instrument, however much worse was named", () => {
    const [bad, worse] = [gauge(30), gauge(3000)].map((named) => firmSide(side(named, typical), spec));
    const most = firmSide(side(gauge(3), typical), spec);
    expect(bad?.accuracy).toBeCloseTo(most.accuracy, 9);
    expect(bad?.resolution).toBeCloseTo(most.resolution, 9);
    expect(worse?.accuracy).toBeCloseTo(most.accuracy, 9);
  });

  it("scatters by three times the ordinary, known as well as that", () => {
    const firm = firmSide(side(gauge(1), 0.5 * typical, 1.5 * typical), spec);
    const { value, share, degreesOfFreedom } = spec.repeatability;
    expect(firm.scatter).toBeCloseTo(3 * Math.hypot(value, share * typical), 9);
    expect(firm.scatterDegreesOfFreedom).toBe(degreesOfFreedom);
  });
});
