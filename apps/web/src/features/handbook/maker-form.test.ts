import { MakerEntry } from "@evenhand/shared/cross-check";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  makerOf,
  neighborsTyped,
  newDateForm,
  newMaker,
  ratiosTyped,
  typedMaker,
  type MakerTyped,
} from "./maker-form";
import { makerProblems, problemsOfMakers } from "./maker-problems";

const typed = (text: Partial<MakerTyped["text"]>, more: Partial<MakerTyped> = {}): MakerTyped => {
  const entry = newMaker();
  return {
    ...entry,
    text: { ...entry.text, make: "Uthwick", source: "Shop manual, p. 12", ...text },
    ...more,
  };
};
const problemsOf = (entry: MakerTyped) => Object.fromEntries(makerProblems(entry));

const words = fc.stringMatching(/^[A-Z][a-z]{0,9}$/);
const year = fc.integer({ min: 1886, max: 2100 });
const positive = fc.double({ min: 0.001, max: 1e4, noNaN: true });
const optional = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const cylinder = fc.integer({ min: 1, max: 12 });
const parts = fc.uniqueArray(fc.constantFrom("block", "axle", "gearbox", "intake"), { minLength: 1 });
const data = fc
  .record({
    chassisPattern: optional(fc.constantFrom("1[35]###", "@@##", "A1")),
    stampFrom: optional(
      fc.constantFrom({ engine: "1{6}" }, { gearbox: "{7-11}" }, { engine: "A", gearbox: "B" }),
    ),
    neverStamped: optional(fc.constantFrom<("engine" | "gearbox")[][]>(["engine"], ["engine", "gearbox"])),
    dateForms: optional(
      fc.dictionary(
        fc.constantFrom("block", "build"),
        fc.record({
          form: fc.constantFrom("M d y", "yyyy w"),
          from: fc.constant(1950),
          to: fc.constant(1980),
        }),
        { minKeys: 1, noNullPrototype: true },
      ),
    ),
    lowVolumeParts: optional(parts),
    axleRatios: optional(fc.array(positive, { minLength: 1, maxLength: 40 })),
    compressionLowestShare: optional(fc.double({ min: 0.01, max: 1, noNaN: true })),
    compressionLeast: optional(positive),
    cylinderNeighbors: optional(
      fc.array(
        fc.tuple(cylinder, cylinder).filter(([one, other]) => one !== other),
        { minLength: 1 },
      ),
    ),
    oilPressureIdle: optional(positive),
    oilPressure2000: optional(positive),
    toeFront: optional(fc.integer({ min: -20, max: 20 })),
    toeRear: optional(fc.integer({ min: -20, max: 20 })),
    timing: optional(fc.integer({ min: -20, max: 40 })),
    cam: optional(fc.constantFrom("stock" as const, "other" as const, "unknown" as const)),
  })
  .filter((given) => Object.values(given).some((value) => value !== undefined));

describe("an entry as it is typed", () => {
  it("becomes what the service takes", () => {
    const entry = makerOf(
      typed(
        {
          model: " Larksong ",
          fromYear: "1965",
          axleRatios: "3.08, 3.36 3.70",
          timing: "−4",
          cylinderNeighbors: "1-2, 3 – 4",
        },
        {
          cam: "stock",
          dateForms: [{ ...newDateForm(), part: "block", form: "M d y", from: "1955", to: "1979" }],
        },
      ),
    );
    expect(MakerEntry.parse(entry)).toEqual({
      make: "Uthwick",
      model: "Larksong",
      fromYear: 1965,
      source: "Shop manual, p. 12",
      data: {
        axleRatios: [3.08, 3.36, 3.7],
        timing: -4,
        cylinderNeighbors: [
          [1, 2],
          [3, 4],
        ],
        cam: "stock",
        dateForms: { block: { form: "M d y", from: 1955, to: 1979 } },
      },
    });
  });

  it("is read back as it was stored, and nothing is wrong with it", () => {
    const entries = fc.record({
      make: words,
      model: optional(words),
      fromYear: optional(year),
      source: words,
      data,
    });
    fc.assert(
      fc.property(entries, (entry) => {
        const back = typedMaker(entry);
        expect(problemsOf(back)).toEqual({});
        expect(makerOf(back)).toEqual(entry);
        expect(MakerEntry.safeParse(makerOf(back)).success).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it("in which nothing is wrong is taken by the contract, whatever was typed", () => {
    const anything = fc.oneof(
      fc.constant(""),
      fc.string({ maxLength: 90 }),
      fc.double().map(String),
      year.map(String),
    );
    const text = fc.record(Object.fromEntries(Object.keys(newMaker().text).map((name) => [name, anything])));
    fc.assert(
      fc.property(text, (some) => {
        const found = makerProblems(typed(some));
        // A field refused is left as it was; the last year stands or falls with the first.
        const kept = Object.entries(some).filter(([name]) => name !== "toYear" && !found.has(name));
        const entry = typed({ ...Object.fromEntries(kept), toeRear: "1" });
        expect(problemsOf(entry)).toEqual({});
        expect(MakerEntry.safeParse(JSON.parse(JSON.stringify(makerOf(entry)))).success).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("lists", () => {
  it("reads ratios with commas or spaces between", () => {
    expect(ratiosTyped("3.08, 3.36;3.70 4.11")).toEqual([3.08, 3.36, 3.7, 4.11]);
    expect(ratiosTyped(" ")).toEqual([]);
  });

  it("reads pairs of cylinders and nothing else", () => {
    expect(neighborsTyped("1-2,3 - 4")).toEqual([
      [1, 2],
      [3, 4],
    ]);
    for (const text of ["1", "1-2-3", "1-1", "a-b", "1,2"]) expect(neighborsTyped(text)).toBeNull();
  });
});

describe("what is wrong with an entry", () => {
  it("is named at each field", () => {
    const entry = typed({
      make: " ",
      source: "",
      fromYear: "65",
      axleRatios: "3.08, high",
      compressionLowestShare: "75",
      oilPressureIdle: "-2",
      timing: "early",
      cylinderNeighbors: "1",
      chassisPattern: "[1",
      stampEngine: "{",
      stampGearbox: "x".repeat(81),
    });
    expect(problemsOf(entry)).toEqual({
      make: "missing",
      source: "missing",
      fromYear: "not-a-year",
      axleRatios: "ratios",
      compressionLowestShare: "over-one",
      oilPressureIdle: "not-positive",
      timing: "not-a-number",
      cylinderNeighbors: "neighbors",
      chassisPattern: "brackets",
      stampEngine: "braces",
      stampGearbox: "too-long",
    });
  });

  it("is that it gives no figure", () => {
    expect(problemsOf(typed({}))).toEqual({ figures: "no-figure" });
    expect(problemsOf(typed({ timing: "6" }))).toEqual({});
    expect(problemsOf(typed({}, { neverStamped: ["engine"] }))).toEqual({});
  });

  it("is years that end before they begin", () => {
    expect(problemsOf(typed({ fromYear: "1970", toYear: "1969", timing: "6" }))).toEqual({
      toYear: "years-turned-round",
    });
    expect(problemsOf(typed({ fromYear: "1970", toYear: "1970", timing: "6" }))).toEqual({});
  });

  it("is a date code without part, year or form, or a part dated twice", () => {
    const empty = newDateForm();
    expect(problemsOf(typed({}, { dateForms: [empty] }))).toEqual({
      [`${empty.key}/part`]: "missing",
      [`${empty.key}/form`]: "missing",
      [`${empty.key}/from`]: "missing",
      [`${empty.key}/to`]: "missing",
    });
    const row = { ...newDateForm(), part: "block", form: "M d y", from: "1955", to: "1979" };
    const again = { ...row, key: "again", to: "1950" };
    expect(problemsOf(typed({}, { dateForms: [row, again] }))).toEqual({
      "again/part": "part-twice",
      "again/to": "years-turned-round",
    });
  });

  it("is the same cars twice, unless one is taken out", () => {
    const one = typed({ timing: "6" });
    const other = typed({ make: "uthwick", timing: "8" });
    expect([...problemsOfMakers([one, other])]).toEqual([[other.key, new Map([["make", "twice"]])]]);
    expect(problemsOfMakers([{ ...one, removed: true }, other]).size).toBe(0);
  });
});
