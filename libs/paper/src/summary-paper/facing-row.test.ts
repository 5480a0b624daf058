import { currentSheet } from "@evenhand/record/report-document";
import type { SummaryItem } from "@evenhand/shared/summary";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { expect, it } from "vitest";
import { facingRows } from "./facing-row.ts";

const words = sheetWords(currentSheet);
const line = (position: string, stated: string | null, found: string | null): SummaryItem => ({
  entry: 0,
  item: "tires.tread-depth",
  position,
  outcome: "differ",
  standing: "differs",
  direction: "stated-better",
  severity: "danger",
  found: true,
  reason: "apart",
  said: { stated, found },
});
const told = (...lines: [SummaryItem, ...SummaryItem[]]) =>
  facingRows(lines, words).map(({ place, stated, found }) => [place, stated.text, found.text]);

it("is one row where both sides said the same of all places", () => {
  expect(told(line("left-front", "8 mm", "2 mm"), line("left-rear", "8 mm", "2 mm"))).toEqual([
    ["Tread depth (left front, left rear)", "8 mm", "2 mm"],
  ]);
});

it("tells the places apart on the side that said different things of them", () => {
  expect(told(line("left-front", null, "2 mm"), line("left-rear", null, null))).toEqual([
    ["Tread depth", "said nothing", "left front: 2 mm; left rear: no finding"],
  ]);
});

it("is a row for each pair of what was said where both sides differ from place to place", () => {
  expect(
    told(
      line("left-front", "8 mm", "2 mm"),
      line("left-rear", "7 mm", "3 mm"),
      line("right-rear", "8 mm", "2 mm"),
    ),
  ).toEqual([
    ["Tread depth (left front, right rear)", "8 mm", "2 mm"],
    ["Tread depth, left rear", "7 mm", "3 mm"],
  ]);
});
