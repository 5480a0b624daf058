import { describe, expect, it } from "vitest";
import type { Answer, Fault } from "@evenhand/shared/answer";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "../compare/index.ts";

const faultsAt = (item: string, position: string, found: Fault[], denied: "all" | string[] = []) => {
  const answer: Answer = { kind: "faults", found, denied };
  return finding(item, answer, { position });
};
const dent = (spot?: string, millimeters?: number, kind = "dent"): Fault => ({
  kind,
  ...(spot === undefined ? {} : { spot }),
  ...(millimeters === undefined ? {} : { extent: { value: millimeters, unit: "mm" } }),
});
const left = "left-front-fender";
const right = "right-front-fender";

type At = { readonly position?: string; readonly item?: string };
/** What became of a fault that the statement has at the left front fender and the inspection elsewhere. */
const mirrored = (stated: Fault, found: Fault, { position = right, item = "body.faults" }: At = {}) => {
  const { entries } = compare(
    statement([faultsAt("body.faults", left, [stated]), faultsAt(item, position, [], "all")]),
    inspection([faultsAt("body.faults", left, [], "all"), faultsAt(item, position, [found])]),
    sheet,
  );
  const lines = entries.filter(({ atom }) => atom.of === "fault");
  return {
    stated: lines.find(({ atom }) => atom.of === "fault" && atom.a === 0),
    found: lines.find(({ atom }) => atom.of === "fault" && atom.b === 0),
  };
};
const isMirrored = (...sides: Parameters<typeof mirrored>): boolean => {
  const { stated, found } = mirrored(...sides);
  const marked = [stated, found].map((line) => line?.marks.includes("perhaps-other-side") === true);
  expect(new Set(marked).size).toBe(1);
  return marked[0] === true;
};

describe("a fault stated on one side of the car and found at the same place of the other", () => {
  it("is perhaps left and right exchanged: nobody is accused, and it is looked at again", () => {
    const { stated, found } = mirrored(dent("upper-front", 40), dent("upper-front", 40));
    expect(found).toMatchObject({
      outcome: "doubtful",
      reason: "perhaps-other-side",
      standing: "in-doubt",
      position: right,
    });
    expect(stated).toMatchObject({
      outcome: "consistent",
      reason: "perhaps-other-side",
      direction: "neither",
      standing: "not-contradicted",
      severity: null,
      position: left,
    });
  });

  it("is not, where it lies elsewhere on the panel, at another panel, or where the car has no other side", () => {
    expect(isMirrored(dent("upper-front"), dent("upper-front"))).toBe(true);
    expect(isMirrored(dent("upper-front"), dent("lower-rear"))).toBe(false);
    expect(isMirrored(dent("upper-front"), dent())).toBe(true);
    expect(isMirrored(dent(), dent("lower-rear"))).toBe(true);
    expect(isMirrored(dent("upper-front"), dent("upper-front"), { position: "right-quarter" })).toBe(false);
    expect(isMirrored(dent("upper-front"), dent("upper-front"), { position: "hood" })).toBe(false);
  });

  it("is one of the same family: a ding for a dent, and never rust for a dent", () => {
    expect(isMirrored(dent("upper-front"), dent("upper-front", undefined, "ding"))).toBe(true);
    expect(isMirrored(dent("upper-front"), dent("upper-front", undefined, "corrosion"))).toBe(false);
  });

  it("is about as long: up to twice, or half", () => {
    expect(isMirrored(dent("upper-front", 49), dent("upper-front", 99))).toBe(true);
    expect(isMirrored(dent("upper-front", 49), dent("upper-front", 100))).toBe(false);
    expect(isMirrored(dent("upper-front", 99), dent("upper-front", 49))).toBe(true);
    expect(isMirrored(dent("upper-front", 100), dent("upper-front", 49))).toBe(false);
    expect(isMirrored(dent("upper-front", 40), dent("upper-front"))).toBe(true);
    expect(isMirrored(dent("upper-front"), dent("upper-front", 40))).toBe(true);
    const inInches: Fault = { ...dent("upper-front"), extent: { value: 1.6, unit: "in" } };
    expect(isMirrored(dent("upper-front", 40), inInches)).toBe(true);
  });

  it("stands for one found fault only, the other staying what it is", () => {
    const { entries } = compare(
      statement([
        faultsAt("body.faults", left, [dent("upper-front")]),
        faultsAt("body.faults", right, [], "all"),
      ]),
      inspection([
        faultsAt("body.faults", left, [], "all"),
        faultsAt("body.faults", right, [dent("upper-front"), dent("upper-front")]),
      ]),
      sheet,
    );
    const found = entries.filter(({ atom }) => atom.of === "fault" && atom.b !== undefined);
    expect(found.map(({ reason }) => reason)).toEqual(["perhaps-other-side", "denied-found"]);
  });

  it("both ways at once stays two faults that were each found where they were stated", () => {
    const both = [
      faultsAt("body.faults", left, [dent("upper-front")]),
      faultsAt("body.faults", right, [dent("upper-front")]),
    ];
    const { entries } = compare(statement(both), inspection(both), sheet);
    expect(entries.filter(({ marks }) => marks.includes("perhaps-other-side"))).toEqual([]);
  });
});
