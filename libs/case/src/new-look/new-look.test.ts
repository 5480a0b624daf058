import { expect, test } from "vitest";
import { newLook } from "./index.ts";

const place = { item: "electrics.horn", position: "", atom: { of: "answer" } } as const;
type Looked = Parameters<typeof newLook>[1]["entries"][number];
const entry = (more: Partial<Looked>): Looked => ({
  ...place,
  outcome: "differ",
  direction: "stated-better",
  standing: "differs",
  calls: { a: "good", b: "danger" },
  ...more,
});
const other = entry({ item: "body.panel" });

test.each<[string, Partial<Looked>, string]>([
  ["still worse than stated", {}, "uphold"],
  ["never stated, and bad", { outcome: "unstated", calls: { a: null, b: "danger" } }, "uphold"],
  ["never stated, and found good", { outcome: "unstated", calls: { a: null, b: "good" } }, "clear"],
  ["both say the same", { outcome: "agree", direction: "neither", standing: "confirmed" }, "clear"],
  [
    "both say the same, against a rule",
    { outcome: "agree", direction: "neither", standing: "contradicted-by-figures" },
    "uphold",
  ],
  [
    "within what the hands scatter",
    { outcome: "consistent", direction: "neither", standing: "not-contradicted" },
    "clear",
  ],
  ["better than stated", { direction: "found-better" }, "clear"],
  ["in doubt", { outcome: "doubtful" }, "leave"],
  ["not seen", { outcome: "unseen", direction: "neither", standing: "unseen" }, "leave"],
])("%s", (_, more, says) => {
  expect(newLook(place, { entries: [other, entry(more)] })).toEqual({ index: 1, says });
});

test("where the line is gone, its place speaks; where that is gone too, nothing does", () => {
  const gone = { ...place, atom: { of: "denial", kind: "rust", by: "b" } } as const;
  expect(newLook(gone, { entries: [other, entry({})] })?.index).toBe(1);
  expect(newLook(gone, { entries: [other] })).toBeNull();
});
