import { describe, expect, it } from "vitest";
import { catalog } from "./catalog.ts";

describe("the line on how far both sides scatter", () => {
  it("is silent where every reading stands as well by how far they really do", () => {
    expect(catalog.scatter({ readings: 30, asDeclared: 0.01, onlyAsDeclared: 0 })).toBeUndefined();
  });

  it("says that they scatter more where that is the likelier", () => {
    expect(catalog.scatter({ readings: 30, asDeclared: 0.2, onlyAsDeclared: 12 })).toBe(
      "By what was found better than stated, the two sides scatter more than they declared: 12 readings agree or differ only if both sides measured as exactly as they declared.",
    );
  });

  it("accuses nobody where it is not", () => {
    expect(catalog.scatter({ readings: 30, asDeclared: 0.7, onlyAsDeclared: 1 })).toBe(
      "1 reading agrees or differs only if both sides measured as exactly as they declared; what was found better than stated does not speak against it.",
    );
  });
});

describe("the lines on repeats and on readings that are alike", () => {
  it("give the figures of each side that has enough, and none of what was not counted", () => {
    const few = { found: "too-few", places: 3, degreesOfFreedom: 4 } as const;
    const known = { found: "as-declared", places: 37, degreesOfFreedom: 54, ratio: 0.863 } as const;
    const like = { compared: 70, same: 5, expected: 14.6, chance: 1, moreThanChance: false, blind: 5 };
    expect(
      catalog.likeness({ repeats: { a: few, b: known }, likeReadings: { ...like, later: "b" } }),
    ).toEqual([
      "B: 37 places read more than once tell; their variance is 0.9 times the sheet's, over 54 degrees of freedom.",
      "Of 70 readings both sides took 5 are the same to the last digit; chance makes at most about 14.6 so.",
    ]);
    expect(catalog.likeness({})).toEqual([]);
  });
});
