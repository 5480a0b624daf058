import { describe, expect, it } from "vitest";
import { compressionRecord } from "../compression/record.ts";
import { displacementRecord } from "../displacement/record.ts";
import { inUseTreadRecord } from "../in-use-tread/record.ts";
import { firmLimitProblems } from "./index.ts";

describe("a record's limit", () => {
  it("takes the firm's own figure for common practice and says so", () => {
    expect(displacementRecord.limit("displacement.share")).toEqual({
      id: "displacement.share",
      value: 0.01,
      unit: "1",
      origin: "common-practice",
    });
    expect(displacementRecord.limit("displacement.share", { "displacement.share": 0.02 })).toEqual({
      id: "displacement.share",
      value: 0.02,
      unit: "1",
      origin: "firm",
    });
  });

  it("never lets a firm change a regulation", () => {
    expect(inUseTreadRecord.limit("in-use.tread", { "in-use.tread": 1 })).toEqual({
      id: "in-use.tread",
      value: 2,
      unit: "1/32in",
      origin: "regulation",
    });
  });

  it("names the maker's", () => {
    expect(compressionRecord.makersLimit("compression.lowest-share", 0.7)).toEqual({
      id: "compression.lowest-share",
      value: 0.7,
      unit: "1",
      origin: "maker",
    });
  });
});

describe("firmLimitProblems", () => {
  it("finds all that is wrong", () => {
    expect(
      firmLimitProblems({
        "in-use.tread": 1,
        "no.such": 1,
        "displacement.share": 0.5,
        "cranking.least-12": 9,
      }),
    ).toEqual([
      { id: "in-use.tread", reason: "not-the-firms-to-set" },
      { id: "no.such", reason: "unknown-limit" },
      { id: "displacement.share", reason: "out-of-range" },
    ]);
  });

  it.each([
    [0.002, true],
    [0.05, true],
    [0.0019, false],
    [0.051, false],
  ])("takes a displacement share of %f: %s", (value, fine) => {
    expect(firmLimitProblems({ "displacement.share": value }).length === 0).toBe(fine);
  });
});
