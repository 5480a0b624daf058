import * as fc from "fast-check";
import type { Answer } from "@evenhand/shared/answer";
import { Report } from "@evenhand/shared/report";
import { describe, expect, it } from "vitest";
import { type Place, placeKey } from "../place/index.ts";
import { isBlind, opensPlace, showable, wholeCar, withhold, type Work } from "./index.ts";

const horn: Place = { item: "electrics.horn", position: "" };
const tire: Place = { item: "wheels.tread-depth", position: "left-front" };
const works: Answer = { kind: "working", value: "yes" };
const dead: Answer = { kind: "working", value: "no" };
const notSeen: Answer = { kind: "not-seen", reason: "no-time" };

const work = (state: string, ...committed: Work["committed"]): Work => ({ state, committed });

describe("what opens a place", () => {
  it.each<[string, unknown]>([
    ["not seen", notSeen],
    ["what is no answer", { kind: "reading", unit: "mm", values: "abc" }],
    ["nothing", null],
    ["working: not known", { kind: "working", value: "not-known" }],
    ["presence: not known", { kind: "presence", value: "not-known" }],
    ["choice: not known", { kind: "choice", option: "not-known" }],
    ["faults with none found and none denied", { kind: "faults", found: [], denied: [] }],
  ])("%s opens nothing", (_, answer) => expect(opensPlace(answer)).toBe(false));

  it.each<[string, Answer]>([
    ["dead", dead],
    ["absent", { kind: "presence", value: "absent" }],
    ["none at all", { kind: "faults", found: [], denied: "all" }],
    ["a fault", { kind: "faults", found: [{ kind: "corrosion" }], denied: [] }],
    ["a code", { kind: "code", text: "not-known" }],
  ])("%s opens it", (_, answer) => expect(opensPlace(answer)).toBe(true));
});

describe("what may be shown", () => {
  it("is everything to whoever has no open order on the car", () => {
    expect(showable([])).toBe("whole");
    expect(showable([work("reported"), work("declined"), work("cancelled")])).toBe("whole");
  });

  it("is what the order has answered, and nothing before it is accepted", () => {
    expect(showable([work("accepted", { ...horn, answer: dead }, { ...tire, answer: notSeen })])).toEqual([
      horn,
    ]);
    expect(showable([work("ordered")])).toEqual([]);
  });

  it("is only what every open order has answered, so that none reads in another what it is to find", () => {
    const done = work("accepted", { ...horn, answer: dead }, { ...tire, answer: works });
    expect(showable([done, work("ordered")])).toEqual([]);
    expect(showable([done, work("accepted", { ...horn, answer: works })])).toEqual([horn]);
    expect(showable([done, work("reported")])).toEqual([horn, tire]);
  });
});

const place = fc.record({
  item: fc.constantFrom("electrics.horn", "wheels.tread-depth", "interior.headliner", "paint.thickness"),
  position: fc.constantFrom("", "left-front", "right-front"),
});
const answer = fc.constantFrom<Answer>(works, dead, notSeen, { kind: "choice", option: "not-known" });
const anyWork = fc.record({
  state: fc.constantFrom("ordered", "accepted", "reported", "declined", "cancelled"),
  committed: fc.uniqueArray(
    fc.record({ item: place.map(({ item }) => item), position: fc.constant(""), answer }),
    {
      selector: ({ item }) => item,
    },
  ),
});
const runs = { numRuns: 2_000 };

describe("for all orders", () => {
  it("one more order never shows more", () => {
    fc.assert(
      fc.property(fc.array(anyWork), anyWork, (before, more) => {
        const [less, all] = [showable([...before, more]), showable(before)];
        if (all === "whole") return;
        if (less === "whole") throw new Error("one more order showed the whole");
        expect(all).toEqual(expect.arrayContaining(less));
      }),
      runs,
    );
  });

  it("nothing is shown at a place that some open order has not answered", () => {
    fc.assert(
      fc.property(fc.array(anyWork, { minLength: 1 }), (all) => {
        const open = all.filter(({ state }) => state === "ordered" || state === "accepted");
        const shown = showable(all);
        expect(shown === "whole").toBe(open.length === 0);
        for (const { item } of shown === "whole" ? [] : shown)
          for (const { committed } of open)
            expect(committed.find((each) => each.item === item)?.answer).toSatisfy(
              (found: Answer | undefined) => found !== undefined && opensPlace(found),
            );
      }),
      runs,
    );
  });
});

const statement = (findings: readonly object[]): Report =>
  Report.parse({
    format: "evenhand-report",
    version: 1,
    kind: "statement",
    sheet: { id: "evenhand", version: 1 },
    vehicle: {
      make: "Corvane",
      model: "Alder",
      modelYear: 1962,
      identification: "A7K214883",
      form: {
        body: "wagon",
        doors: 4,
        cylinders: 6,
        construction: "body-on-frame",
        gearbox: "manual",
        driven: "rear",
        fuelSystem: "carburetor",
        systemVolts: 12,
        brakes: { front: "drum", rear: "drum" },
      },
    },
    author: { organization: "Delia's firm", role: "dealer" },
    visit: { started: "2026-05-04T15:00:00Z", zone: "America/Chicago" },
    terms: "plum terms",
    instruments: [
      { id: "gauge-a", name: "plum gauge" },
      { id: "gauge-b", name: "quince gauge" },
    ],
    persons: [
      { id: "one", name: "plum person" },
      { id: "two", name: "quince person" },
    ],
    scales: [
      {
        id: "own",
        name: "plum scale",
        grades: [
          { id: "low", name: "low" },
          { id: "high", name: "high" },
        ],
      },
    ],
    findings,
  });

describe("a statement that is withheld", () => {
  it("keeps no byte of what may not be shown, nor whose and by which instrument it was", () => {
    fc.assert(
      fc.property(fc.uniqueArray(place, { selector: placeKey }), fc.array(place), (stated, open) => {
        const isOpen = (each: Place): boolean => open.some((one) => placeKey(one) === placeKey(each));
        const findings = stated.map((each) => ({
          ...each,
          answer: { kind: "code", text: isOpen(each) ? "quince" : "plum" },
          note: isOpen(each) ? "quince" : "plum",
          instrument: isOpen(each) ? "gauge-b" : "gauge-a",
          person: isOpen(each) ? "two" : "one",
        }));
        const shown = withhold(statement(findings), open);
        expect(JSON.stringify(shown)).not.toContain("plum");
        expect(shown.findings.length + shown.withheld.length).toBe(stated.length);
        expect(shown.findings.every(isOpen)).toBe(true);
        expect(JSON.stringify(shown).includes("quince person")).toBe(stated.some(isOpen));
      }),
      { numRuns: 1_000 },
    );
  });

  it("keeps the scale of a grade that is shown", () => {
    const graded = { ...horn, answer: { kind: "grade", scale: "own", value: "low" } };
    expect(withhold(statement([graded]), [horn]).scales).toHaveLength(1);
    expect(withhold(statement([graded]), [tire]).scales).toEqual([]);
  });
});

const blind = (shown: readonly Place[], more: Partial<Parameters<typeof isBlind>[0]> = {}): boolean =>
  isBlind({ place: horn, answer: dead, shown, before: null, ...more });

describe("an answer is blind", () => {
  it("until its place was shown, or the whole", () => {
    expect(blind([])).toBe(true);
    expect(blind([tire, { ...tire, position: "" }])).toBe(true);
    expect(blind([tire, horn])).toBe(false);
    expect(blind([wholeCar])).toBe(false);
  });

  it("and stays so while it stands unchanged, whatever is shown later", () => {
    expect(blind([horn], { before: { answer: { ...dead }, blind: true } })).toBe(true);
    expect(blind([horn], { before: { answer: works, blind: true } })).toBe(false);
    expect(blind([], { before: { answer: { ...dead }, blind: false } })).toBe(false);
  });

  it("but not by what stood before where nobody judged that", () => {
    expect(blind([horn], { before: { answer: { ...dead } } })).toBe(false);
  });

  it("never again for another answer once its place was shown, in whatever company", () => {
    fc.assert(
      fc.property(fc.array(place), fc.array(place), place, fc.boolean(), (a, b, at, was) => {
        const shown = [...a, at, ...b];
        const before = { answer: works, blind: was };
        expect(isBlind({ place: at, answer: dead, shown, before })).toBe(false);
        expect(isBlind({ place: at, answer: dead, shown, before: null })).toBe(false);
      }),
      runs,
    );
  });
});
