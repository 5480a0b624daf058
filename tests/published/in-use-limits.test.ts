// Source: 49 CFR 570 subpart A, each figure marked in the fixture. Equality passes; both sides of every boundary.
import { describe, expect, it } from "vitest";
import { inUseFreePlay } from "@evenhand/handbook/in-use-free-play";
import { inUseLining } from "@evenhand/handbook/in-use-lining";
import { inUseRunout } from "@evenhand/handbook/in-use-runout";
import { inUseToe } from "@evenhand/handbook/in-use-toe";
import { inUseTread } from "@evenhand/handbook/in-use-tread";
import { exactly } from "@evenhand/handbook/interval";
import { limits } from "@evenhand/handbook/limits";
import published from "../../fixtures/published/cfr49-570.json" with { type: "json" };

const { items } = published;
const STEP = 1e-6;

describe("49 CFR 570 boundaries", () => {
  it("tread: not less than 2/32 in", () => {
    const least = items["570.9 tread"].min_in * 32;
    expect(least).toBe(2);
    expect(inUseTread(exactly(least)).verdict).toBe("holds");
    expect(inUseTread(exactly(least - STEP)).verdict).toBe("breaks");
    expect(inUseTread(exactly(least + STEP)).verdict).toBe("holds");
  });

  it.each([
    ["riveted", items["570.5 friction material"].riveted_in],
    ["bonded", items["570.5 friction material"].bonded_in],
  ] as const)("%s lining: not less than 1/32 in", (fixing, least) => {
    expect(least).toBe(1 / 32);
    expect(inUseLining(exactly(least), fixing).verdict).toBe("holds");
    expect(inUseLining(exactly(least - STEP), fixing).verdict).toBe("breaks");
  });

  it.each([
    [14, 2],
    [16, 2],
    [18, 2.25],
    [20, 2.5],
    [22, 2.75],
  ])("a steering wheel of %s in: not more than %s in of play", (diameter, most) => {
    const row = items["570.7 lash"].rows.find(
      ({ wheelDia_in }) => wheelDia_in === diameter || (wheelDia_in === "<=16" && diameter <= 16),
    );
    expect(row?.lash_in).toBe(most);
    expect(inUseFreePlay(exactly(most), diameter).verdict).toBe("holds");
    expect(inUseFreePlay(exactly(most + STEP), diameter).verdict).toBe("breaks");
  });

  it.each([
    [17, 2, 2.25],
    [19, 2.25, 2.5],
    [21, 2.5, 2.75],
  ])(
    "a wheel of %s in, for which the table has no row, is undecided between %s and %s in",
    (diameter, strict, lax) => {
      expect(inUseFreePlay(exactly(strict), diameter).verdict).toBe("holds");
      expect(inUseFreePlay(exactly(strict + STEP), diameter).reason).toBe("between-rows");
      expect(inUseFreePlay(exactly(lax), diameter).reason).toBe("between-rows");
      expect(inUseFreePlay(exactly(lax + STEP), diameter).verdict).toBe("breaks");
    },
  );

  it("a wheel over 22 in is never failed, since the table ends", () => {
    expect(inUseFreePlay(exactly(2.75), 24).verdict).toBe("holds");
    expect(inUseFreePlay(exactly(4), 24).reason).toBe("between-rows");
  });

  it.each([0.125, -0.125])(
    "toe at a maker's value of %s: not more than 1.5 times it, in or out",
    (makers) => {
      const most = items["570.7 toe"].max_ratioToMakersValue * 0.125;
      for (const sign of [1, -1]) {
        expect(inUseToe(exactly(sign * most), makers).verdict).toBe("holds");
        expect(inUseToe(exactly(sign * (most + STEP)), makers).verdict).toBe("breaks");
      }
    },
  );

  it("runout: not more than 1/8 in", () => {
    const most = items["570.10 runout"].lateralRadial_max_in;
    expect(most).toBe(1 / 8);
    expect(inUseRunout(exactly(most)).verdict).toBe("holds");
    expect(inUseRunout(exactly(most + STEP)).verdict).toBe("breaks");
  });

  it("cannot be set by a firm", () => {
    const inUse = Object.entries(limits).filter(([id]) => id.startsWith("in-use."));
    expect(inUse).toHaveLength(9);
    expect(inUse.filter(([, limit]) => limit.firmMaySet)).toEqual([]);
  });
});
