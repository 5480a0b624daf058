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

const text = (value: unknown): string => JSON.stringify(value);

/** What another notation changes; nothing where it is as it should be. */
const changes = (a: Report, b: Report, [pickA, pickB]: readonly [number, number]): unknown[] => {
  const [one, other] = [
    analyze(a, b, sheet),
    analyze(writtenOtherwise(a, pickA), writtenOtherwise(b, pickB), sheet),
  ];
  const [lines, others] = [answered(one), answered(other)];
  if ([...lines, ...others].some(isSlip)) return [];
  const parted = lines.flatMap((line, index): unknown[] => {
    const twin = others[index];
    if (twin === undefined) return [["lost", line.item]];
    const same = text(said(twin)) === text(said(line)) && figuresApart(line, twin) <= 1e-9;
    return same ? [] : [[said(line), said(twin)]];
  });
  const whole = text([places(one), one.tally]) === text([places(other), other.tally]);
  return [...parted, ...(whole && others.length === lines.length ? [] : ["the whole"])];
};

describe("units and ways of writing", () => {
  it("change nothing that is said, and figures by no more than 1e-9 of δ", () => {
    fc.assert(
      fc.property(arbitraryReports(8), fc.nat(50), fc.nat(50), ({ a, b }, pickA, pickB) => {
        expect(changes(a, b, [pickA, pickB])).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });
});
