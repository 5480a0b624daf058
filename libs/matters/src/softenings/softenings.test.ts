import { describe, expect, it } from "vitest";
import { silent } from "../../testing/lines.ts";
import { softenings } from "./index.ts";

const compared = {
  softness: { decisive: 0, hedged: 0, byEye: 0, silent: 0 },
  entries: [],
  a: { kind: "statement", organization: "Larkspur Motor House", seal: null, started: "2026-05-04T15:00:00Z" },
  b: { kind: "inspection", organization: "Quiet Hill", seal: null, started: "2026-05-12T15:00:00Z" },
} as const satisfies Partial<Parameters<typeof softenings>[0]>;
const said = (more: Pick<Parameters<typeof softenings>[0], "chance" | "scatter">) =>
  softenings({ ...compared, entries: [], ...more }, silent);

const chance = { readings: 40, doubtful: 2, expectedDoubtful: 1.2 };

describe("what hangs on what both sides declared", () => {
  it("is a sentence with its counts, and says what speaks against it", () => {
    const scatter = { readings: 30, asDeclared: 0.2, onlyAsDeclared: 12 };
    expect(said({ chance, scatter })).toEqual([
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
      expect(said({ chance, scatter })[0]?.words).toBe(
        "Of 40 readings set against each other, 1 agrees or differs only if both sides measured as exactly as they say; what was found better than stated does not speak against it.",
      );
    }
  });

  it("is nothing where nothing does, or where it was not counted yet", () => {
    expect(said({ chance, scatter: { readings: 30, asDeclared: 0.01, onlyAsDeclared: 0 } })).toEqual([]);
    expect(said({ chance })).toEqual([]);
  });
});
