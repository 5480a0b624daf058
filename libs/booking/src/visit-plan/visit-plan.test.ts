import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Need } from "@evenhand/shared/sheet";
import { FULL, item, MINUTE, planOf } from "../../testing/builders.ts";
import { GATE_SUBJECTS, planVisit, stageOf, STAGES, type VisitItem } from "./index.ts";

const minutesOf = (plan: ReturnType<typeof planOf>) =>
  plan.segments.map(({ stage, from, to }) => [stage, from / MINUTE, to / MINUTE]);

describe("the order of a visit", () => {
  it("goes from cold to the first lift, the road, what is done hot, and the second lift", () => {
    expect(minutesOf(planOf(FULL))).toEqual([
      ["before-start", 0, 10],
      ["before-start", 10, 60],
      ["cold-start", 60, 65],
      ["first-lift", 65, 95],
      ["road", 95, 125],
      ["hot", 125, 145],
      ["second-lift", 145, 160],
    ]);
    expect(planOf(FULL).lifts.map(({ spell, from, to }) => [spell, from / MINUTE, to / MINUTE])).toEqual([
      [1, 65, 95],
      [2, 145, 160],
    ]);
    expect(
      planOf(FULL)
        .segments.filter(({ daylight }) => daylight)
        .map(({ items }) => items),
    ).toEqual([["body.paint"]]);
  });

  it("makes one stay on the lift of two with nothing between them", () => {
    const plan = planOf([
      {
        car: "c",
        items: [
          item("a.b", 10, ["lift"]),
          item("a.c", 10, ["lift", "hot-engine"]),
          item("a.d", 5, ["lift", "daylight"]),
        ],
      },
    ]);
    expect(plan.lifts).toEqual([{ car: "c", spell: 1, from: 0, to: 30 * MINUTE }]);
  });

  it("looks at every car cold before it starts the first", () => {
    const second = {
      car: "car-2",
      items: [item("body.paint", 20, ["daylight"]), item("underbody.rails", 15, ["lift"])],
    };
    const plan = planOf([...FULL, second]);
    expect(plan.segments.map(({ car, stage }) => `${car} ${stage}`).slice(0, 4)).toEqual([
      "car-1 before-start",
      "car-1 before-start",
      "car-2 before-start",
      "car-1 cold-start",
    ]);
    expect(plan.cars).toEqual([
      { car: "car-1", from: 0, to: 180 * MINUTE, needsCold: true, warms: true },
      { car: "car-2", from: 60 * MINUTE, to: 200 * MINUTE, needsCold: false, warms: false },
    ]);
    expect(plan.lifts.map(({ car, spell }) => [car, spell])).toEqual([
      ["car-1", 1],
      ["car-1", 2],
      ["car-2", 1],
    ]);
  });

  it("keeps a car off the road until every subject of its gate is looked at", () => {
    const road = item("road.tracking", 20, ["road"]);
    const problem = (...items: VisitItem[]) => {
      const planned = planVisit([{ car: "c", items: [road, ...items] }]);
      return planned.kind === "refused" ? planned.problems : [];
    };
    expect(problem()).toEqual([{ code: "road-without-gate", car: "c", missing: GATE_SUBJECTS }]);
    const some = item("a.b", 5, ["lift"], { gate: ["brakes", "fuel-lines"] });
    const rest = item("a.c", 5, [], { gate: ["lift-points", "steering", "tires", "wheel-fixings"] });
    expect(problem(some)).toEqual([
      { code: "road-without-gate", car: "c", missing: ["lift-points", "steering", "tires", "wheel-fixings"] },
    ]);
    expect(problem(some, rest)).toEqual([]);
    const tooLate = { ...some, stage: "second-lift" as const };
    expect(problem(tooLate, rest)).toEqual([
      { code: "road-without-gate", car: "c", missing: ["brakes", "fuel-lines"] },
    ]);
  });

  it.each([
    ["nothing-chosen", [{ car: "c", items: [] }]],
    ["nothing-chosen", []],
    ["impossible-minutes", [{ car: "c", items: [item("a.b", 0)] }]],
    ["impossible-minutes", [{ car: "c", items: [item("a.b", Number.NaN)] }]],
    ["impossible-minutes", [{ car: "c", items: [item("a.b", Infinity)] }]],
    ["stage-against-needs", [{ car: "c", items: [item("a.b", 5, ["lift"], { stage: "hot" })] }]],
    ["stage-against-needs", [{ car: "c", items: [item("a.b", 5, ["cold-engine"], { stage: "hot" })] }]],
    ["stage-against-needs", [{ car: "c", items: [item("a.b", 5, ["hot-engine"], { stage: "first-lift" })] }]],
    ["stage-against-needs", [{ car: "c", items: [item("a.b", 5, ["road"], { stage: "hot" })] }]],
  ])("refuses %s", (code, cars) => {
    const planned = planVisit(cars);
    expect(planned.kind === "refused" && planned.problems.map((problem) => problem.code)).toEqual([code]);
  });

  it("names what the dealer must allow", () => {
    const items = [
      item("brakes.lining", 20, ["lift", "dismantling"]),
      item("trunk.carpet", 5, ["permission"]),
      item("papers.title", 5),
    ];
    expect(planOf([{ car: "c", items }]).toAllow).toEqual([
      { car: "c", item: "brakes.lining" },
      { car: "c", item: "trunk.carpet" },
    ]);
  });
});

const anyItem: fc.Arbitrary<VisitItem> = fc
  .record({
    minutes: fc.integer({ min: 1, max: 60 }),
    needs: fc.uniqueArray(fc.constantFrom(...Need.options), { maxLength: 3 }),
    gate: fc.oneof(fc.constant(GATE_SUBJECTS), fc.subarray([...GATE_SUBJECTS])),
  })
  .map((one) => ({ item: `${one.needs.join("-") || "none"}.x`, ...one }));

describe("any planned visit", () => {
  it("runs without gaps, in order for each car, with at most two stays on the lift, and every minute in it", () => {
    const cars = fc.array(fc.array(anyItem, { minLength: 1, maxLength: 8 }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(cars, (lists) => {
        const planned = planVisit(lists.map((items, i) => ({ car: `car-${i}`, items })));
        if (planned.kind === "refused") return;
        const { segments, lifts, length, cars: spans } = planned.plan;
        segments.forEach(({ from }, i) => expect(from).toBe(i === 0 ? 0 : segments[i - 1]!.to));
        expect(segments.at(-1)!.to).toBe(length);
        for (const [i, items] of lists.entries()) {
          const own = segments.filter(({ car }) => car === `car-${i}`);
          const order = own.map(({ stage }) => STAGES.indexOf(stage));
          expect(order).toEqual([...order].sort((a, b) => a - b));
          const stays = lifts.filter(({ car }) => car === `car-${i}`);
          expect(stays.map(({ spell }) => spell)).toEqual([1, 2].slice(0, stays.length));
          const worked = own.reduce((sum, { from, to }) => sum + to - from, 0) / MINUTE;
          expect(worked).toBe(items.reduce((sum, { minutes }) => sum + minutes, 0) + 5 * stays.length);
          expect(own.flatMap(({ items: ids }) => ids).length).toBe(items.length);
          expect(!order.includes(STAGES.indexOf("road")) || order[0]! < STAGES.indexOf("road")).toBe(true);
          const span = spans[i]!;
          expect(own.every(({ from, to }) => from >= span.from && to <= span.to)).toBe(true);
        }
        for (const { from, to, lift } of segments) {
          expect(lifts.some((stay) => stay.from <= from && to <= stay.to)).toBe(lift);
        }
      }),
      { numRuns: 2_000 },
    );
  });

  it("puts an item by its needs where it names no stage", () => {
    const stages = [
      [],
      ["cold-engine"],
      ["cold-engine", "road"],
      ["lift"],
      ["road"],
      ["hot-engine"],
      ["lift", "hot-engine"],
    ] as const;
    expect(stages.map((needs) => stageOf(item("a.b", 1, needs)))).toEqual([
      "before-start",
      "before-start",
      "cold-start",
      "first-lift",
      "road",
      "hot",
      "second-lift",
    ]);
    expect(stageOf(item("a.b", 1, ["lift"], { stage: "second-lift" }))).toBe("second-lift");
  });
});
