import { createHash } from "node:crypto";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Outcome } from "@evenhand/shared/outcome";
import { asOneLook, LEAST_DECOYS, lookedAgain, MOST_PARTING, secondLookPlaces } from "./index.ts";

const hashOf =
  (seed: string) =>
  (text: string): string =>
    createHash("sha256").update(`${seed} ${text}`).digest("hex");
const entry = (index: number, outcome: Outcome, more: Partial<Entry> = {}): Entry => ({
  item: `electrics.item-${String(index).padStart(3, "0")}`,
  position: "",
  atom: { of: "answer" },
  outcome,
  calls: { a: null, b: null },
  severity: null,
  marks: [],
  reason: "same-answer",
  direction: "neither",
  standing: "confirmed",
  firmness: { a: "asserted", b: "asserted" },
  finding: { a: 0, b: 0 },
  ...more,
});
const named = (entries: Entry[], seed = "seed", order: number[] = []): string[] =>
  secondLookPlaces({ entries, order }, hashOf(seed)).map(({ item }) => item);
const many = (count: number, outcome: Outcome, from = 0): Entry[] =>
  Array.from({ length: count }, (_, index) => entry(from + index, outcome));

describe("secondLookPlaces", () => {
  it("names what parts, whichever side it favors, and half as many that do not", () => {
    const entries = [
      ...many(10, "differ"),
      entry(10, "doubtful", { direction: "found-better" }),
      ...many(40, "agree", 20),
      ...many(40, "consistent", 60),
    ];
    const places = named(entries);
    expect(places).toEqual(expect.arrayContaining(entries.slice(0, 11).map(({ item }) => item)));
    expect(places).toHaveLength(11 + 6);
  });

  it("names as many as there must be where nothing parts, so that being asked tells nothing", () => {
    expect(named(many(40, "agree"))).toHaveLength(LEAST_DECOYS);
    expect(named(many(2, "agree"))).toHaveLength(2);
    expect(named([])).toEqual([]);
  });

  it("names nothing that only one of them answered, or that cannot be set against each other", () => {
    const alone = { finding: { a: null, b: 0 } };
    const blind = { finding: { a: 0, b: null } };
    expect(
      named([
        entry(0, "unstated", alone),
        entry(1, "differ", blind),
        entry(2, "unseen", blind),
        entry(3, "unseen"),
        entry(4, "incomparable"),
      ]),
    ).toEqual([]);
  });

  it("names a place once, however many of its lines part, and never as one that does not", () => {
    const same = { item: "body.panel-faults" };
    expect(named([entry(0, "differ", same), entry(1, "doubtful", same), entry(2, "agree", same)])).toEqual([
      "body.panel-faults",
    ]);
  });

  it("takes the most pressing where more part than one can look at again", () => {
    const entries = many(60, "differ");
    const places = named(entries, "seed", [59, 58]);
    expect(places).toHaveLength(MOST_PARTING);
    expect(places).toContain("electrics.item-059");
    expect(places).toContain("electrics.item-058");
    expect(places).not.toContain("electrics.item-018");
  });

  it("is the same for the same report, other for another, and its order tells nothing", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), fc.string(), (parting, seed) => {
        const entries = [...many(parting, "differ"), ...many(60, "agree", 100)];
        const places = named(entries, seed);
        expect(
          named(
            entries.toReversed(),
            seed,
            entries.toReversed().map((_, at) => at),
          ).length,
        ).toBe(places.length);
        expect(named(entries, seed)).toEqual(places);
        expect(places).toEqual(places.toSorted());
      }),
      { numRuns: 1000 },
    );
    const draws = Array.from({ length: 20 }, (_, seed) => named(many(60, "agree"), `${seed}`).join(" "));
    expect(new Set(draws).size).toBeGreaterThan(15);
  });
});

const horn = (value: "yes" | "no" | "intermittent", more: Partial<Finding> = {}): Finding => ({
  item: "electrics.horn",
  position: "",
  answer: { kind: "working", value },
  firmness: "asserted",
  basis: "seen",
  ...more,
});

describe("lookedAgain", () => {
  const before = horn("no", { blind: true, time: "2026-05-04T15:00:00Z" });
  const first = { answer: before.answer, blind: true, time: "2026-05-04T15:00:00Z" };

  it("keeps the first answer beside the second, blind as it was", () => {
    expect(lookedAgain(before, horn("yes"))).toEqual({ ...horn("yes"), look: "second", first });
  });

  it("keeps it where the second look finds the same, if it says that it was one", () => {
    expect(lookedAgain(before, horn("no", { look: "second" }))).toMatchObject({ look: "second", first });
    expect(lookedAgain(before, horn("no", { note: "Loud." }))).toEqual(horn("no", { note: "Loud." }));
  });

  it("keeps the very first, however often it is looked at, and whatever is claimed", () => {
    const second = lookedAgain(before, horn("yes"));
    const claimed = horn("intermittent", { first: { answer: { kind: "working", value: "yes" } } });
    expect(lookedAgain(second, claimed)).toMatchObject({ look: "second", first });
    expect(lookedAgain(second, horn("yes", { note: "Loud." }))).toMatchObject({ look: "second", first });
  });

  it("is no second look unless it was asked for", () => {
    expect(asOneLook(lookedAgain(before, horn("yes")))).toEqual(horn("yes"));
  });
});
