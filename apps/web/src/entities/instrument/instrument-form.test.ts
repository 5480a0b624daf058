import type { Instrument } from "@evenhand/shared/report";
import type { InstrumentKind } from "@evenhand/sheet/instrument-kinds";
import { expect, test } from "vitest";
import { instrumentOf, isWhole, typedOf, unitsOf, withFigure, withKind } from "./instrument-form.ts";

const gauge: Instrument = {
  id: "depth-gauge",
  name: "Depth gauge",
  resolution: { value: 0.1, unit: "mm" },
  accuracy: { share: 0.003, absolute: { value: 0.2, unit: "mm" } },
  calibrated: "2031-02-03",
};

const kinds: readonly InstrumentKind[] = [{ name: "tape", units: ["cm", "in"], dimensions: ["length"] }];

test("what is not changed is kept as it was", () => {
  expect(instrumentOf(typedOf(gauge), "mm", { own: gauge.id, taken: [] })).toEqual(gauge);
});

test("nothing typed says nothing of how fine or how true it is", () => {
  expect(instrumentOf({ ...typedOf(undefined), name: " Tape " }, "mm", { taken: ["tape"] })).toEqual({
    id: "tape-2",
    name: "Tape",
  });
});

test("another kind brings its unit, but not under a figure that stands", () => {
  expect(withKind(typedOf(undefined), "tape", kinds).unit).toBe("cm");
  expect(withKind(typedOf(gauge), "tape", kinds).unit).toBe("mm");
  expect(unitsOf(kinds, "tape", "mm")).toEqual(["cm", "in", "mm"]);
  expect(unitsOf(kinds, "tape", "V")).toEqual(["cm", "in"]);
});

test("a figure that cannot be read keeps it from being saved, until it is corrected", () => {
  const wrong = withFigure(typedOf(gauge), "within", undefined, "abc");
  expect(isWhole(wrong, false)).toBe(false);
  expect(isWhole(withFigure(wrong, "within", 0.3, undefined), false)).toBe(true);
  expect(isWhole(typedOf(gauge), true)).toBe(false);
});
