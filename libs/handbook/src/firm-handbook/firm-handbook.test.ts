import type { MakerEntry } from "@evenhand/shared/cross-check";
import { describe, expect, it } from "vitest";
import {
  findMaker,
  firmHandbookProblems,
  PROBLEM_WORDS,
  reportHandbook,
  reportHandbookProblems,
} from "./index.ts";

const car = { make: "Uthwick", model: "Larksong", modelYear: 1979 };
const entry = (source: string, more: Partial<MakerEntry> = {}): MakerEntry => ({
  make: "Uthwick",
  source,
  data: { timing: 6 },
  ...more,
});

describe("findMaker", () => {
  it.each([
    ["the make, however it is written", [entry("make", { make: " uthwick " })], "make"],
    ["nothing of another make", [entry("other", { make: "Ebblecote" })], undefined],
    ["nothing of another model", [entry("other", { model: "Windrow" })], undefined],
    ["the model before the make", [entry("model", { model: "larksong" }), entry("make")], "model"],
    ["the years before all years", [entry("years", { fromYear: 1978 }), entry("all")], "years"],
    [
      "the model before years of the make",
      [entry("model", { model: "Larksong" }), entry("years", { toYear: 1982 })],
      "model",
    ],
    [
      "the later of two as close",
      [entry("early", { fromYear: 1960 }), entry("late", { fromYear: 1961 })],
      "late",
    ],
    [
      "nothing past its years",
      [entry("before", { toYear: 1978 }), entry("after", { fromYear: 1980 })],
      undefined,
    ],
    ["the first and the last year", [entry("year", { fromYear: 1979, toYear: 1979 })], "year"],
  ] as const)("takes %s", (_, makers, source) => {
    expect(findMaker(makers, car)?.source).toBe(source);
  });
});

describe("reportHandbook", () => {
  const limits = { "tire-age.caution-years": 5 };

  it("holds the firm's limits and what it knows of the make", () => {
    expect(reportHandbook({ limits, makers: [entry("shop manual")] }, car)).toEqual({
      limits,
      maker: { source: "shop manual", data: { timing: 6 } },
    });
    expect(reportHandbook({ limits, makers: [] }, car)).toEqual({ limits });
    expect(reportHandbook({ limits: {}, makers: [entry("shop manual")] }, car)?.limits).toEqual({});
  });

  it("is absent where the firm says nothing of the car", () => {
    expect(
      reportHandbook({ limits: {}, makers: [entry("other", { model: "Windrow" })] }, car),
    ).toBeUndefined();
  });
});

describe("firmHandbookProblems", () => {
  it("finds nothing wrong with a limit in its range and entries of different cars", () => {
    const makers = [
      entry("a"),
      entry("b", { model: "Larksong" }),
      entry("c", { fromYear: 1979, toYear: 1979 }),
    ];
    expect(firmHandbookProblems({ limits: { "tire-age.caution-years": 5 }, makers })).toEqual([]);
  });

  it("takes years that are open at one end, and the same make for different years", () => {
    const makers = [
      entry("from", { fromYear: 1970 }),
      entry("to", { toYear: 1969 }),
      entry("one", { fromYear: 1960, toYear: 1965 }),
      entry("other", { fromYear: 1960, toYear: 1966 }),
      entry("another", { fromYear: 1961, toYear: 1966 }),
    ];
    expect(firmHandbookProblems({ limits: {}, makers })).toEqual([]);
  });

  it("names each limit, each entry", () => {
    const limits = { "tire-age.caution-years": 50, "in-use.tread": 1, "no.such": 1 };
    const makers = [
      entry("a", { fromYear: 1970, toYear: 1969 }),
      entry("b"),
      entry("b again", { make: "UTHWICK" }),
    ];
    expect(firmHandbookProblems({ limits, makers })).toEqual([
      { at: "/limits/tire-age.caution-years", reason: "out-of-range" },
      { at: "/limits/in-use.tread", reason: "not-the-firms-to-set" },
      { at: "/limits/no.such", reason: "unknown-limit" },
      { at: "/makers/0/toYear", reason: "years-turned-round" },
      { at: "/makers/2", reason: "twice" },
    ]);
  });
});

describe("reportHandbookProblems", () => {
  it("says in words what a file's figures cannot be, by their place", () => {
    expect(
      reportHandbookProblems({ handbook: { limits: { "in-use.tread": 1, "tire-age.caution-years": 5 } } }),
    ).toEqual([{ at: "/handbook/limits/in-use.tread", reason: PROBLEM_WORDS["not-the-firms-to-set"] }]);
  });

  it("has nothing to say where there are none", () => {
    expect(reportHandbookProblems({})).toEqual([]);
  });
});
