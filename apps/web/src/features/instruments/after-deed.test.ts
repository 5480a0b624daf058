import type { FirmInstrument } from "@evenhand/shared/http/instruments";
import { expect, test } from "vitest";
import { afterDeed } from "./after-deed";

const one: FirmInstrument = { id: "one", name: "One", kind: "tire gauge", retired: false };
const two: FirmInstrument = { ...one, id: "two", name: "Two" };

test("adds an instrument, changes it in its place, and takes it out", () => {
  expect(afterDeed([one], { kind: "keep", instrument: two })).toEqual([one, two]);
  const changed = { ...one, name: "First" };
  expect(afterDeed([one, two], { kind: "keep", instrument: changed })).toEqual([changed, two]);
  expect(afterDeed([one, two], { kind: "remove", instrument: one })).toEqual([two]);
});

test("retires an instrument, and uses it again", () => {
  const retired = afterDeed([one, two], { kind: "retire", instrument: one });
  expect(retired).toEqual([{ ...one, retired: true }, two]);
  expect(afterDeed(retired, { kind: "use", instrument: { ...one, retired: true } })).toEqual([one, two]);
});
