import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { arbitraryReports } from "../../testing/arbitrary-report.ts";
import { sheet } from "../../testing/small-reports.ts";
import { writtenOtherwise } from "../../testing/ways-of-writing.ts";
import { analyze } from "./index.ts";

const answered = ({ entries }: Comparison): Entry[] =>
  entries.filter(({ finding }) => finding.a !== null || finding.b !== null);

/** All that is said of a line but its figures. */
const said = ({
  item,
  position,
  atom,
  outcome,
  calls,
  severity,
  marks,
  reason,
  direction,
  standing,
}: Entry) => ({
  item,
  position,
  atom,
  outcome,
  calls,
  severity,
  marks,
  reason,
  direction,
  standing,
});

/** Whether the unit slipped hangs on the digits that were written. */
const isSlip = ({ marks }: Entry): boolean => marks.includes("perhaps-unit");

const figuresApart = (one: Entry, other: Entry): number => {
  if (one.figures?.of !== "reading" || other.figures?.of !== "reading") return 0;
  const [first, second] = [one.figures, other.figures];
  const apart = Math.max(
    Math.abs(first.difference - second.difference),
    Math.abs(first.expandedUncertainty - second.expandedUncertainty),
  );
  return apart === 0 ? 0 : apart / first.delta;
};

const places = ({ order, entries }: Comparison): string[] =>
  order.map((index) => `${entries[index]?.item} ${entries[index]?.position}`);

const check = (a: Report, b: Report, [pickA, pickB]: readonly [number, number]): void => {
  const [one, other] = [
    analyze(a, b, sheet),
    analyze(writtenOtherwise(a, pickA), writtenOtherwise(b, pickB), sheet),
  ];
  const [lines, others] = [answered(one), answered(other)];
  expect(others).toHaveLength(lines.length);
  if ([...lines, ...others].some(isSlip)) return;
  for (const [index, line] of lines.entries()) {
    const twin = others[index] ?? line;
    expect(said(twin)).toEqual(said(line));
    expect(figuresApart(line, twin)).toBeLessThanOrEqual(1e-9);
  }
  expect(places(other)).toEqual(places(one));
  expect(other.tally).toEqual(one.tally);
};

describe("units and ways of writing", () => {
  it("change nothing that is said, and figures by no more than 1e-9 of δ", () => {
    fc.assert(
      fc.property(arbitraryReports(8), fc.nat(50), fc.nat(50), ({ a, b }, pickA, pickB) => {
        check(a, b, [pickA, pickB]);
      }),
      { numRuns: 1000 },
    );
  });
});
