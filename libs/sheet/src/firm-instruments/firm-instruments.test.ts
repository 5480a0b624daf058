import type { FirmInstrument } from "@evenhand/shared/http/instruments";
import type { Instrument } from "@evenhand/shared/report";
import { expect, test } from "vitest";
import type { InstrumentKind } from "../instrument-kinds/index.ts";
import { firmInstrumentProblems, instrumentsInUse } from "./index.ts";

const kinds: InstrumentKind[] = [
  { name: "tread depth gauge", dimensions: ["length"], units: ["1/32in", "mm"] },
  { name: "tire gauge", dimensions: ["pressure"], units: ["psi"] },
];
const plain = { id: "tread", name: "Brass one", kind: "tread depth gauge" };
const asReported: Instrument & { kind: string } = {
  ...plain,
  resolution: { value: 0.5, unit: "1/32in" },
  accuracy: { absolute: { value: 0.2, unit: "mm" }, share: 0 },
};
const tread: FirmInstrument = { ...asReported, retired: false };
const problems = (...instruments: FirmInstrument[]) => firmInstrumentProblems({ instruments }, kinds);

test("takes what its kind measures, and an instrument without figures", () => {
  expect(problems(tread, { ...plain, id: "plain", retired: false })).toEqual([]);
});

test("says of each figure what would work", () => {
  expect(problems({ ...tread, kind: "tire gauge", resolution: { value: 0, unit: "psi" } })).toEqual([
    {
      at: "/instruments/0/resolution/value",
      reason: "The smallest step must be more than 0; leave it out where it is not known.",
    },
    {
      at: "/instruments/0/accuracy/absolute/unit",
      reason:
        "A tire gauge measures pressure, and mm is a unit of length: write the accuracy in psi, or choose another kind.",
    },
  ]);
});

test("names a kind that is not the sheet's, and an id given twice", () => {
  expect(problems(tread, { ...tread, kind: "rod" })).toEqual([
    { at: "/instruments/1/id", reason: "Instrument 0 has this id already: give each its own." },
    {
      at: "/instruments/1/kind",
      reason: "The sheet measures with no such thing. Write one of: tread depth gauge, tire gauge.",
    },
  ]);
});

test("gives a report those in use, as a report names them", () => {
  expect(instrumentsInUse({ instruments: [tread, { ...tread, id: "old", retired: true }] })).toEqual([
    asReported,
  ]);
});
