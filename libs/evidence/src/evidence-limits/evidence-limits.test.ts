import { expect, test } from "vitest";
import { filesFull, MOST_FILES } from "./index.ts";

test.each([
  ["dealer", 0, 0, null],
  ["dealer", MOST_FILES.dealer.report - 1, MOST_FILES.dealer.place - 1, null],
  ["dealer", MOST_FILES.dealer.report, 0, "report"],
  ["dealer", 30, MOST_FILES.dealer.place, "place"],
  ["inspector", MOST_FILES.dealer.report, MOST_FILES.dealer.place, null],
  ["inspector", MOST_FILES.inspector.report, 0, "report"],
  ["carrier", MOST_FILES.carrier.report - 1, MOST_FILES.carrier.place, "place"],
] as const)("a %s with %i files, %i of them here: %s", (author, report, place, full) => {
  expect(filesFull(author, { report, place })).toBe(full);
});
