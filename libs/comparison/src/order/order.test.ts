import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import { SEVERITIES } from "@evenhand/shared/severity";
import { Firmness } from "@evenhand/shared/finding";
import { entry } from "../../testing/small-entries.ts";
import type { ExpectedLoss } from "../expected-loss/index.ts";
import { isDiscrepancy, order } from "./index.ts";

const differ = (more: Partial<Entry> = {}) => entry({ outcome: "differ", standing: "differs", ...more });
const set = (minor: number): ExpectedLoss => ({ state: "set", probability: 1, middle: minor, minor });
const unset: ExpectedLoss = { state: "unset" };
const ordered = (...pairs: [Entry, ExpectedLoss][]) => {
  const losses = new Map(pairs);
  return order(
    pairs.map(([one]) => one),
    (one) => losses.get(one) ?? unset,
  );
};

const by = (a: Entry["firmness"]["a"]): [Entry, ExpectedLoss] => [
  differ({ firmness: { a, b: "asserted" } }),
  set(1),
];
describe("isDiscrepancy", () => {
  it.each([
    [true, { outcome: "doubtful", standing: "in-doubt" }],
    [true, { outcome: "differ", standing: "differs" }],
    [true, { outcome: "unstated", standing: "not-mentioned" }],
    [true, { outcome: "agree", standing: "differs" }],
    [true, { outcome: "agree", standing: "in-doubt" }],
    [true, { outcome: "consistent", standing: "not-mentioned" }],
    [true, { outcome: "unseen", standing: "contradicted-by-figures" }],
    [true, { outcome: "consistent", standing: "contradicted-by-figures", coverageOnly: true }],
    [false, { outcome: "consistent", standing: "not-mentioned", coverageOnly: true }],
    [false, { outcome: "agree", standing: "confirmed" }],
    [false, { outcome: "consistent", standing: "not-contradicted" }],
    [false, { outcome: "unseen", standing: "unseen" }],
    [false, { outcome: "agree", standing: "agreed-fault" }],
  ] as const)("%s: %o", (expected, more) => {
    expect(isDiscrepancy(entry(more))).toBe(expected);
  });
});

describe("order", () => {
  it("puts the graver first, whatever it costs: an open lien before a chip in the glass", () => {
    const pairs = SEVERITIES.toReversed().map((severity, index): [Entry, ExpectedLoss] => [
      differ({ severity }),
      set(900 - index),
    ]);
    expect(ordered(...pairs)).toEqual([4, 3, 2, 1, 0]);
    expect(ordered([differ({ severity: null }), set(9)], [differ({ severity: "small" }), unset])).toEqual([
      1, 0,
    ]);
  });

  it("goes by expected loss then", () => {
    expect(ordered([differ(), set(1)], [differ(), set(3)], [differ(), set(2)])).toEqual([1, 2, 0]);
  });

  it("lets a flat assertion that fails outrank a hedge, and a hedge silence", () => {
    expect(ordered(by(null), by("second-hand"), by("hedged"), by("asserted"))).toEqual([3, 2, 1, 0]);
  });

  it("ranks what both say is bad as what it is", () => {
    const agreed = entry({ outcome: "agree", standing: "agreed-fault", severity: "danger" });
    expect(ordered([differ({ severity: "repair" }), set(9)], [agreed, unset])).toEqual([1, 0]);
  });

  it("keeps sheet order at last, and leaves out what is no discrepancy", () => {
    expect(ordered([differ(), set(1)], [entry(), set(9)], [differ(), set(1)])).toEqual([0, 2]);
  });

  it("gives a full order of any entries", () => {
    const any = fc.record({
      severity: fc.constantFrom(null, ...SEVERITIES),
      a: fc.constantFrom(null, ...Firmness.options),
      minor: fc.option(fc.nat(3), { nil: undefined }),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 12 }), (list) => {
        const pairs = list.map(({ severity, a, minor }): [Entry, ExpectedLoss] => [
          differ({ severity, firmness: { a, b: null } }),
          minor === undefined ? unset : set(minor),
        ]);
        const result = ordered(...pairs);
        expect(result.toSorted((x, y) => x - y)).toEqual(Array.from(pairs.keys()));
        const ranks = result.map((index) =>
          SEVERITIES.findIndex((each) => each === pairs[index]?.[0].severity),
        );
        const known = ranks.map((rank) => (rank < 0 ? SEVERITIES.length : rank));
        expect(known).toEqual(known.toSorted((x, y) => x - y));
      }),
      { numRuns: 1000 },
    );
  });
});
