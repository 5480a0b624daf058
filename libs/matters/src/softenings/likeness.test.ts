import { describe, expect, it } from "vitest";
import { likeness } from "./likeness.ts";

const side = { organization: "Larkspur Motor House", seal: null, started: "2026-05-04T15:00:00Z" };
const pair = {
  a: { ...side, kind: "statement" },
  b: { ...side, kind: "inspection", organization: "Quiet Hill" },
} as const;
const alike = { compared: 70, same: 58, expected: 17.2, chance: 1e-12, moreThanChance: true } as const;
const said = (later: "a" | "b" | null, blind: number) =>
  likeness({ ...pair, likeReadings: { ...alike, later, blind } });
const declared = { found: "as-declared", places: 40, degreesOfFreedom: 60, ratio: 1.1 } as const;
const found = (kind: "too-alike" | "scatters-more", ratio: number) => ({
  found: kind,
  places: 40,
  degreesOfFreedom: 60,
  ratio,
  chance: 0.00012,
});

describe("readings that are the same on both sides", () => {
  it("are a question with its evidence", () => {
    expect(said("b", 0)).toEqual([
      {
        of: "copied",
        side: "b",
        words:
          "Of 70 readings both sides took, 58 are the same to the last digit, where chance makes at most about 18 so: was the inspection written from the statement? Ask how each was read.",
        figures:
          "So many by chance: less than one in a thousand, by declared scatter and rounding. Only these two reports were compared.",
      },
    ]);
    expect(said(null, 0)[0]).toMatchObject({ side: "both" });
    expect(said(null, 0)[0]?.words).toMatch(
      /18 so: was one written from the other\? Ask how each was read\.$/,
    );
    expect(said("a", 0)[0]?.words).toMatch(/was the statement written from the inspection\?/);
  });

  it("are no copy where the later side answered blind", () => {
    expect(said("b", 58)[0]?.words).toMatch(
      /18 so: the inspection gave all of them before the statement was shown, so they are no copy of it\. Ask whether both go back to one earlier report\.$/,
    );
    expect(said("b", 20)[0]?.words).toMatch(
      /18 so: the inspection gave 20 of them before the statement was shown, which are no copy of it\. Ask how the others were read\.$/,
    );
  });

  it("are nothing where chance explains them, or nobody counted", () => {
    const likeReadings = { ...alike, moreThanChance: false, later: "b" as const, blind: 0 };
    expect(likeness({ ...pair, likeReadings })).toEqual([]);
    expect(likeness(pair)).toEqual([]);
  });
});

describe("the repeats of a side", () => {
  it("that lie too close are asked about, before what lies too far apart", () => {
    const repeats = { a: found("scatters-more", 2.3), b: found("too-alike", 0.1) };
    expect(likeness({ ...pair, repeats })).toEqual([
      {
        of: "too-alike",
        side: "b",
        words:
          "The inspection reads 40 places more than once, and the readings lie closer together than separate ones do (0.3 of the usual scatter): ask whether each was read anew.",
        figures:
          "Variance 0.1 times the declared, over 60 degrees of freedom; by chance: less than one in a thousand.",
      },
      {
        of: "scatters-more",
        side: "a",
        words:
          "The statement reads 40 places more than once, and the readings lie farther apart than such readings do (1.5 times the usual scatter): each is worth less than its figures say.",
        figures:
          "Variance 2.3 times the declared, over 60 degrees of freedom; by chance: less than one in a thousand.",
      },
    ]);
  });

  it("that are all the same are said to be so, and ordinary ones are not spoken of", () => {
    const [only, ...others] = likeness({ ...pair, repeats: { a: found("too-alike", 0), b: declared } });
    expect(only?.words).toMatch(
      /and the readings are all the same, which separate ones are not: ask whether/,
    );
    expect(others).toEqual([]);
    expect(likeness({ ...pair, repeats: { a: declared, b: declared } })).toEqual([]);
  });

  it("are told apart by house where both reports are of one kind", () => {
    const both = { a: pair.b, b: { ...pair.b, organization: "Uthwick" } };
    const [first] = likeness({ ...both, repeats: { a: declared, b: found("too-alike", 0.1) } });
    expect(first?.words).toMatch(/^The inspection by Uthwick reads 40 places/);
  });
});
