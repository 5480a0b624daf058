import { expect, test } from "vitest";
import { besideOf, byPlace, inTime, type Picture } from "./pictures.ts";

const picture = (id: string, more: Partial<Picture> = {}): Picture => ({
  id,
  item: "structure.sills",
  position: "left",
  caption: null,
  kind: "jpeg",
  sha256: "0".repeat(64),
  bytes: 5,
  width: 40,
  height: 30,
  placeholder: null,
  copies: [{ size: "small", width: 40, height: 30, sha256: "0".repeat(64) }],
  questions: [],
  marks: [],
  side: "statement",
  ...more,
});

test("pictures stand by place in the sheet's order, the car as a whole first, the statement before the inspection", () => {
  const groups = byPlace(
    [
      picture("5", { item: "gone", position: "" }),
      picture("4", { side: "inspection" }),
      picture("3"),
      picture("2", { item: "", position: "" }),
      picture("1", { position: "right" }),
    ],
    [
      { item: "structure.sills", position: "right" },
      { item: "structure.sills", position: "left" },
    ],
  );
  expect(groups.map(({ pictures }) => pictures.map(({ id }) => id))).toEqual([
    ["2"],
    ["1"],
    ["3", "4"],
    ["5"],
  ]);
});

test("beside a picture lie those of its place from the other side that can be shown", () => {
  const all = [
    picture("1", { side: "inspection" }),
    picture("2", { side: "inspection", copies: [], kind: "pdf" }),
    picture("3", { side: "inspection", position: "right" }),
    picture("4"),
  ];
  expect(besideOf(all, picture("9")).map(({ id }) => id)).toEqual(["1"]);
});

test.each([
  ["2026-05-04T09:10:11", "2026-05-04T09:10:12", -1],
  ["2026-05-04T09:10:12", "2026-05-04T09:10:11", 1],
  [null, "2026-05-04T09:10:11", 1],
] as const)("%s against %s", (one, other, order) => {
  expect(inTime(picture("b", { taken: one }), picture("a", { taken: other }))).toBe(order);
});
