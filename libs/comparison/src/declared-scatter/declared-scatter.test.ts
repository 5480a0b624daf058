import { describe, expect, it } from "vitest";
import type { Entry, ReadingFigures } from "@evenhand/shared/comparison";
import { entry, readingFigures } from "../../testing/small-entries.ts";
import { sheet } from "../../testing/small-reports.ts";
import { worseWay } from "../interval-figures/index.ts";
import { weighByScatter } from "./index.ts";

/** Readings that do not drift and have a better side: by the sheet, 21 items. */
const steady = sheet.sheet.items.filter(({ reading, time }) => reading !== undefined && time !== "drifts");
const higher = steady.filter(({ reading }) => reading?.betterIs === "higher").map(({ id }) => id);
const lower = steady.filter(({ reading }) => reading?.betterIs === "lower").map(({ id }) => id);

const figured = (
  item: string,
  difference: number,
  more: Partial<Entry> = {},
  figures: Partial<ReadingFigures> = {},
) =>
  entry({
    item,
    figures: readingFigures(difference, { delta: 4, ...figures }),
    reason: "within-delta",
    ...more,
  });

/** Fourteen items found better than stated by so much, where lower is better: Δ = A − B is positive. */
const better = (by: number): Entry[] => lower.map((item) => figured(item, by));
const [first = "", second = "", third = ""] = higher;

const marks = (entries: readonly Entry[]): string[] =>
  weighByScatter(entries, sheet)
    .entries.filter((one) => one.marks.includes("only-as-declared"))
    .map(({ item }) => item);

describe("weighByScatter", () => {
  it("has enough items to stand on", () => {
    expect([lower.length, higher.length]).toEqual([14, 6]);
  });

  it("marks nothing that stands by how far both really scatter, and changes nothing else", () => {
    const entries = [...better(0.3), figured(first, 1)];
    const result = weighByScatter(entries, sheet);
    expect(result.entries).toEqual(entries);
    expect(result.scatter).toMatchObject({ readings: 15, onlyAsDeclared: 0 });
    expect(result.scatter.asDeclared).toBeGreaterThan(0.8);
  });

  it("marks an agree and a differ that hang on it, where much was found better than stated", () => {
    const differ = figured(second, 6.2, { outcome: "differ", reason: "beyond-delta" });
    const entries = [...better(2.5), figured(first, 1.9), differ];
    const result = weighByScatter(entries, sheet);
    expect(result.scatter.asDeclared).toBeLessThan(0.05);
    expect(result.entries.map(({ outcome }) => outcome)).toEqual(entries.map(({ outcome }) => outcome));
    expect(marks(entries)).toEqual(expect.arrayContaining([first, second]));
    expect(result.scatter.onlyAsDeclared).toBe(marks(entries).length);
    expect(entries.every((one) => one.marks.length === 0)).toBe(true);
  });

  it("keeps the marks an entry has", () => {
    const result = weighByScatter([...better(2.5), figured(first, 1.9, { marks: ["hedged"] })], sheet);
    expect(result.entries.at(-1)?.marks).toEqual(["hedged", "only-as-declared"]);
  });

  it("is moved by no lie: what was found worse, by anything, widens nothing", () => {
    const honest = [...better(0.3), figured(first, 1.9)];
    const lies = [second, third].map((item) =>
      figured(item, 30, { outcome: "differ", reason: "beyond-delta" }),
    );
    const [alone, among] = [honest, [...honest, ...lies]].map((all) => weighByScatter(all, sheet).scatter);
    expect(among?.asDeclared).toBeGreaterThanOrEqual(alone?.asDeclared ?? 2);
  });

  it("goes by which side of the item is the better one", () => {
    const [some, none] = [-2.5, 2.5].map((difference) => {
      const all = [...better(0.3), ...higher.map((item) => figured(item, difference))];
      return weighByScatter(all, sheet).scatter;
    });
    expect(some?.asDeclared).toBeLessThan(none?.asDeclared ?? 0);
  });

  it("takes all places of an item for less than two witnesses", () => {
    const places = Array.from({ length: 12 }, (_, index) =>
      figured(first, -2.5, { position: `place-${index}` }),
    );
    const few = weighByScatter([...better(0.3).slice(0, 8), ...places], sheet).scatter;
    expect(few).toMatchObject({ readings: 20, asDeclared: null, onlyAsDeclared: 0 });
    const enough = weighByScatter([...better(0.3).slice(0, 9), ...places], sheet).scatter;
    expect(enough.asDeclared).toBeGreaterThan(0.5);
    const apart = [...higher, ...lower.slice(9)].map((item) =>
      figured(item, higher.includes(item) ? -2.5 : 2.5),
    );
    expect(weighByScatter([...better(0.3).slice(0, 9), ...apart], sheet).scatter.asDeclared).toBeLessThan(
      0.05,
    );
  });

  it("asks no witness that drifts, was explained by use, has no better side or no uncertainty, or slipped", () => {
    const drifting = sheet.sheet.items.find(
      ({ reading, time }) => reading !== undefined && time === "drifts",
    )?.id;
    const aimless = steady.find(
      ({ reading }) => reading !== undefined && worseWay(reading).is === "unknown",
    )?.id;
    const mute = [
      figured(drifting ?? "", -2.5),
      figured(aimless ?? "", -2.5),
      figured(first, -2.5, {}, { useAllowed: -1 }),
      figured(first, -2.5, {}, { standardUncertainty: 0, expandedUncertainty: 0 }),
      figured(first, -2.5, { outcome: "doubtful", reason: "perhaps-the-unit" }),
      figured(first, -2.5, { atom: { of: "fault", kind: "dent" } }),
      entry(),
    ];
    expect([drifting, aimless].every((id) => id !== undefined)).toBe(true);
    expect(weighByScatter(mute, sheet).scatter).toEqual({
      readings: 0,
      asDeclared: null,
      onlyAsDeclared: 0,
    });
  });

  it("marks only what the interval decided", () => {
    const others = [
      figured(first, 1.9, { outcome: "agree", reason: "both-past-limit" }),
      figured(first, 6.2, { outcome: "differ", reason: "opposite-calls" }),
      figured(first, 1.9, { outcome: "doubtful", reason: "beyond-chance" }),
    ];
    expect(marks([...better(2.5), ...others])).not.toContain(first);
    const spot = figured(first, 6.2, { outcome: "differ", reason: "worst-spot-beyond-delta" });
    expect(marks([...better(2.5), spot])).toContain(first);
  });

  it("judges what is left after the use allowed", () => {
    expect(marks([...better(2.5), figured(first, 3.9, {}, { useAllowed: 2 })])).toContain(first);
    expect(marks([...better(0.3), figured(first, 3.9, {}, { useAllowed: 3.5 })])).toEqual([]);
  });

  it("gives what is open its chance of being worse by more than what matters, and nothing else one", () => {
    const doubtful = { outcome: "doubtful", reason: "opposite-calls-unsure" } as const;
    const entries = [
      ...better(0.3),
      figured(first, 0, doubtful),
      figured(second, 9, { outcome: "differ", reason: "beyond-delta" }, { probabilityWorse: 1 }),
      figured(third, 0, { ...doubtful, marks: ["over-limit"] }),
    ];
    const chances = weighByScatter(entries, sheet).entries.map(({ figures }) =>
      figures?.of === "reading" ? figures.chanceOff : undefined,
    );
    const [none, far, past] = chances.slice(-3);
    expect(none).toBeLessThan(0.001);
    expect(far).toBeGreaterThan(0.99);
    expect(past).toBeUndefined();
    expect(chances.slice(0, -3).every((chance) => chance === undefined)).toBe(true);
  });
});
