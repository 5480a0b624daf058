import { expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import { findingAt, indexFindings } from "./index.ts";

const finding = (item: string, position: string, note = ""): Finding => ({
  item,
  position,
  note,
  answer: { kind: "working", value: "yes" },
  firmness: "asserted",
  basis: "seen",
  blind: true,
});

it("finds by item and position, also where findings of one item do not stand together", () => {
  const [left, horn, right] = [
    finding("lamps.head", "left"),
    finding("electrics.horn", ""),
    finding("lamps.head", "right"),
  ];
  const index = indexFindings({ findings: [left, horn, right] });
  expect(index.get("lamps.head")).toEqual([left, right]);
  expect(findingAt(index, "lamps.head", "right")).toBe(right);
  expect(findingAt(index, "electrics.horn", "")).toBe(horn);
  expect(findingAt(index, "lamps.head", "rear")).toBeUndefined();
  expect(findingAt(index, "lamps.tail", "left")).toBeUndefined();
});

it("takes the last of two at one place", () => {
  const [first, second] = [finding("lamps.head", "left", "first"), finding("lamps.head", "left", "second")];
  expect(findingAt(indexFindings({ findings: [first, second] }), "lamps.head", "left")).toBe(second);
});
