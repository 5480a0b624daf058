import { describe, expect, it } from "vitest";
import { softenings } from "./index.ts";

const chance = { readings: 40, doubtful: 2, expectedDoubtful: 1.2 };

describe("what hangs on what both sides declared", () => {
  it("is a sentence with its counts, and says what speaks against it", () => {
    const scatter = { readings: 30, asDeclared: 0.2, onlyAsDeclared: 12 };
    expect(softenings({ chance, scatter })).toEqual([
      {
        of: "only-as-declared",
        side: "both",
        words:
          "Of 40 readings set against each other, 12 agree or differ only if both sides measured as exactly as they say; what was found better than stated speaks against it.",
      },
    ]);
  });

  it("is not said to be spoken against where it is not, or nobody can tell", () => {
    for (const asDeclared of [0.7, null]) {
      const scatter = { readings: 30, asDeclared, onlyAsDeclared: 1 };
      expect(softenings({ chance, scatter })[0]?.words).toBe(
        "Of 40 readings set against each other, 1 agrees or differs only if both sides measured as exactly as they say; what was found better than stated does not speak against it.",
      );
    }
  });

  it("is nothing where nothing does, or where it was not counted yet", () => {
    expect(softenings({ chance, scatter: { readings: 30, asDeclared: 0.01, onlyAsDeclared: 0 } })).toEqual(
      [],
    );
    expect(softenings({ chance })).toEqual([]);
  });
});
