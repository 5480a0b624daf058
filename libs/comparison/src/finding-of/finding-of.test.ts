import { expect, it } from "vitest";
import { finding } from "../../testing/small-reports.ts";
import { findingOf } from "./index.ts";

const horn = finding("electrics.horn", { kind: "working", value: "yes" });

it.each([
  [0, horn],
  [1, undefined],
  [-1, undefined],
  [null, undefined],
])("finds at %s what a line rests on, and nothing where that side is silent", (index, found) => {
  expect(findingOf([horn], index)).toBe(found);
});
