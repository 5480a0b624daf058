import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { HistoryTable } from "@evenhand/shared/history";
import { normalDeviate, seededRandom } from "@evenhand/measurement/random";
import { historyTables } from "./index.ts";
import type { PastPair } from "./index.ts";

type Made = {
  readonly firm?: string;
  readonly inspector: string;
  readonly gauge: string;
  readonly against: string;
  readonly difference: number;
};

const pairOf = ({ firm = "firm", inspector, gauge, against, difference }: Made): PastPair => ({
  firm,
  inspector,
  against,
  readings: [
    { kind: "tread depth gauge", unit: "1/32in", gauge, calibrated: null, difference, delta: 2, places: 4 },
  ],
});

const GAUGES = ["one", "two", "three"];

/** Four inspectors with three gauges at five dealers: Ada reads a little high, gauge three much. */
const world = (count: number, dealerLean: (dealer: number) => number = () => 0, noise = 0.2): PastPair[] => {
  const random = seededRandom(17);
  return Array.from({ length: count }, (_, index) => {
    const inspector = ["ada", "ben", "cy", "dot"][index % 4] ?? "";
    const gauge = GAUGES[Math.floor(random() * 3)] ?? "";
    const dealer = Math.floor(random() * 5);
    const difference =
      (inspector === "ada" ? 0.4 : 0) +
      (gauge === "three" ? 0.9 : 0) +
      dealerLean(dealer) +
      noise * normalDeviate(random);
    return pairOf({ inspector, gauge, against: `dealer ${dealer}`, difference });
  });
};

const tableOf = (pairs: readonly PastPair[], firm = "firm"): HistoryTable => {
  const table = historyTables(pairs).get(firm);
  return table ?? { format: "evenhand-history", version: 1, leans: [], gauges: [] };
};

const offsetOf = (table: HistoryTable, name: string) => table.gauges.find(({ gauge }) => gauge === name);
const leanOf = (table: HistoryTable, name: string) => table.leans.find(({ inspector }) => inspector === name);

describe("historyTables", () => {
  it("finds the gauge that reads high and the hand that does, one beside the other", () => {
    const table = tableOf(world(160));
    expect(HistoryTable.parse(table)).toEqual(table);
    const [three, one] = [offsetOf(table, "three"), offsetOf(table, "one")];
    expect((three?.effect ?? 0) - (one?.effect ?? 0)).toBeCloseTo(0.9, 0);
    const others = ["ben", "cy", "dot"].map((name) => leanOf(table, name)?.effect ?? Number.NaN);
    expect((leanOf(table, "ada")?.effect ?? 0) - Math.max(...others)).toBeGreaterThan(0.2);
    expect(three?.pairs).toBeGreaterThanOrEqual(20);
    expect(three?.standardError).toBeGreaterThan(0);
  });

  it("says nothing of whom fewer than twenty pairs tell", () => {
    const pairs = world(76);
    expect(tableOf(pairs).leans).toEqual([]);
    const table = tableOf(world(80));
    expect(table.leans.map(({ inspector, pairs: many }) => [inspector, many])).toEqual([
      ["ada", 20],
      ["ben", 20],
      ["cy", 20],
      ["dot", 20],
    ]);
    expect(table.gauges.every(({ pairs: many }) => many >= 20)).toBe(true);
  });

  it("begins anew with a gauge that was calibrated", () => {
    const pairs = world(120).map((pair, index) => ({
      ...pair,
      readings: pair.readings.map((one) =>
        one.gauge === "three" ? { ...one, calibrated: index < 60 ? "2025-01-10" : "2026-01-10" } : one,
      ),
    }));
    expect(offsetOf(tableOf(world(120)), "three")?.pairs).toBeGreaterThan(30);
    for (const { gauge, calibrated, pairs: many } of tableOf(pairs).gauges.filter(
      (one) => one.gauge === "three",
    ))
      expect([gauge, calibrated !== null, many < 31]).toEqual(["three", true, true]);
  });

  it("keeps each firm's own apart, though all are weighed together", () => {
    const pairs = world(160).map((pair, index) => ({ ...pair, firm: index % 4 < 2 ? "left" : "right" }));
    expect(tableOf(pairs, "left").leans.map(({ inspector }) => inspector)).toEqual(["ada", "ben"]);
    expect(tableOf(pairs, "right").leans.map(({ inspector }) => inspector)).toEqual(["cy", "dot"]);
  });

  it("says nothing where one hand or one gauge is all there is, or all read alike", () => {
    const alone = world(60).map((pair) => ({ ...pair, inspector: "ada" }));
    expect(historyTables(alone).size).toBe(0);
    const alike = world(60).map((pair) => ({
      ...pair,
      readings: pair.readings.map((one) => ({ ...one, difference: 0 })),
    }));
    expect(historyTables(alike).size).toBe(0);
    expect(historyTables([]).size).toBe(0);
  });

  it("does not take lies and slips for a gauge, whichever way", () => {
    const pairs = world(160);
    const lied = pairs.map((pair, index) =>
      index % 8 === 0
        ? { ...pair, readings: pair.readings.map((one) => ({ ...one, difference: one.difference - 6 })) }
        : pair,
    );
    const [honest, with20Lies] = [tableOf(pairs), tableOf(lied)];
    for (const { inspector, effect } of with20Lies.leans)
      expect(Math.abs(effect - (leanOf(honest, inspector)?.effect ?? Number.NaN))).toBeLessThan(0.12);
  });

  it("is moved by no dealer's lean, however great, and by no order", () => {
    const pairs = world(90);
    const plain = tableOf(pairs);
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -12, max: 12, noNaN: true }), { minLength: 5, maxLength: 5 }),
        fc.nat(89),
        (leans, from) => {
          const leaning = pairs.map((pair) => ({
            ...pair,
            readings: pair.readings.map((one) => ({
              ...one,
              difference: one.difference + (leans[Number(pair.against.at(-1))] ?? 0),
            })),
          }));
          const table = tableOf([...leaning.slice(from), ...leaning.slice(0, from)]);
          for (const [index, { effect, standardError }] of table.leans.entries()) {
            expect(effect).toBeCloseTo(plain.leans[index]?.effect ?? Number.NaN, 4);
            expect(standardError).toBeCloseTo(plain.leans[index]?.standardError ?? Number.NaN, 4);
          }
          expect(table.gauges.map(({ gauge }) => gauge)).toEqual(plain.gauges.map(({ gauge }) => gauge));
        },
      ),
      { numRuns: 30 },
    );
  });

  it("gives the same bytes whatever the order of the pairs", () => {
    const pairs = world(90);
    const bytes = JSON.stringify(tableOf(pairs));
    fc.assert(
      fc.property(fc.shuffledSubarray(pairs, { minLength: 90 }), (other) => {
        expect(JSON.stringify(tableOf(other))).toBe(bytes);
      }),
      { numRuns: 30 },
    );
  });

  it("tells how far off its offsets are", () => {
    const random = seededRandom(5);
    const rounds = 30;
    let [squares, claimed] = [0, 0];
    for (let round = 0; round < rounds; round += 1) {
      const offsets = GAUGES.map(() => 0.5 * normalDeviate(random));
      const pairs = Array.from({ length: 90 }, (_, index) =>
        pairOf({
          inspector: ["ada", "ben", "cy"][index % 3] ?? "",
          gauge: GAUGES[Math.floor(index / 3) % 3] ?? "",
          against: `dealer ${Math.floor(random() * 4)}`,
          difference: (offsets[Math.floor(index / 3) % 3] ?? 0) + 0.3 * normalDeviate(random),
        }),
      );
      const table = tableOf(pairs);
      const middle = offsets.reduce((sum, offset) => sum + offset, 0) / 3;
      for (const [index, offset] of offsets.entries()) {
        const found = offsetOf(table, GAUGES[index] ?? "");
        squares += ((found?.effect ?? 0) - (offset - middle)) ** 2;
        claimed += (found?.standardError ?? 0) ** 2;
      }
    }
    // Honest: never claims to be nearer than it is.
    expect(Math.sqrt(squares)).toBeLessThan(1.1 * Math.sqrt(claimed));
  });
});
