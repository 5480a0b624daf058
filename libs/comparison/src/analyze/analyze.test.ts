import { describe, expect, it } from "vitest";
import type { Comparison } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "../compare/index.ts";
import { analyze } from "./index.ts";
import type { AnalyzeOptions } from "./index.ts";

const tire = (item: string, answer: Finding["answer"]): Finding =>
  finding(item, answer, { position: "left-front" });
const claimedNew = tire("wheels.tire-age", { kind: "choice", option: "new" });
const oldTire = tire("wheels.tire-identification", { kind: "code", text: "0VNE HKTA 0512" });
const horn = (value: "yes" | "no") => finding("electrics.horn", { kind: "working", value });
const at = (result: Comparison, item: string) =>
  result.entries.find((entry) => entry.item === item && ["", "left-front"].includes(entry.position));

const outcomes = (entries: Comparison["entries"]) => entries.map(({ outcome }) => outcome);
const psi = (value: number, position: string) =>
  finding(
    "engine.compression",
    { kind: "reading", unit: "psi", values: [{ value }] },
    { position, instrument: "gauge" },
  );
const itemsOf = ({ order, entries }: Comparison) => order.map((index) => entries[index]?.item);
const usedDays = ({ crossChecks }: Comparison) =>
  crossChecks.flatMap(({ limits = [] }) => limits).find(({ id }) => id === "claims.new-days");
describe("analyze", () => {
  it("says what was compared, by which engine and sheet", () => {
    const seals = { a: "a".repeat(64), b: null };
    expect(analyze(statement([]), inspection([]), sheet, { seals })).toMatchObject({
      format: "evenhand-comparison",
      engine: expect.stringMatching(/^evenhand-comparison \d+\.\d+\.\d+$/),
      sheet: { id: "evenhand", version: 1 },
      vehicle: { make: "Alderbrook", model: "Meridian", modelYear: 1958, identification: "AM58-10442" },
      a: {
        kind: "statement",
        organization: "Larkspur Motor House",
        seal: seals.a,
        started: "2026-05-04T15:00:00Z",
      },
      b: { kind: "inspection", seal: null },
    });
  });

  it("keeps the outcomes of compare", () => {
    const [a, b] = [statement([horn("yes")]), inspection([horn("no")])];
    expect(outcomes(analyze(a, b, sheet).entries)).toEqual(outcomes(compare(a, b, sheet).entries));
  });

  it("lets a broken rule contradict a claim nobody answered", () => {
    const result = analyze(statement([claimedNew]), inspection([oldTire]), sheet);
    const claim = at(result, "wheels.tire-age");
    expect(claim).toMatchObject({
      outcome: "differ",
      marks: ["by-figures"],
      severity: "danger",
      standing: "contradicted-by-figures",
    });
    expect(
      result.crossChecks.some(
        ({ verdict, claim: of }) => verdict === "breaks" && of?.item === "wheels.tire-age",
      ),
    ).toBe(true);
    expect(result.order.map((index) => result.entries[index]?.item)).toContain("wheels.tire-age");
    expect(result.standings["contradicted-by-figures"]).toBe(1);
  });

  it("takes the figures of the firm that answers, never of the one whose claims are judged", () => {
    const [a, b] = [statement([claimedNew]), inspection([oldTire])];
    const limits = { "claims.new-days": 3650 };
    const generous = analyze(a, { ...b, handbook: { limits } }, sheet);
    expect(usedDays(generous)).toMatchObject({ value: 3650, origin: "firm" });
    expect(generous.handbook).toEqual({ side: "b", limits, makerSource: null });
    expect(analyze(a, b, sheet)).not.toHaveProperty("handbook");
    expect(usedDays(analyze({ ...a, handbook: { limits } }, b, sheet))).toMatchObject({ value: 730 });
    expect(usedDays(analyze(a, b, sheet))).toMatchObject({ value: 730, origin: "common-practice" });
  });

  it("keeps both seals", () => {
    const seals = { a: null, b: "b".repeat(64) };
    expect(analyze(statement([]), inspection([]), sheet, { seals })).toMatchObject({
      a: { seal: null },
      b: { seal: seals.b },
    });
  });

  it("changes no standing for a hint that breaks, though it tests a claim", () => {
    const codes = ["identity.paint-code", "doors.first-color"].map((item, index) =>
      finding(item, { kind: "code", text: `M${index}` }),
    );
    const result = analyze(statement(codes), inspection(codes), sheet);
    const hints = result.crossChecks.filter(
      ({ verdict, strength, claim }) => verdict === "breaks" && strength === "hint" && claim !== null,
    );
    expect(hints.map(({ rule }) => rule)).toContain("first-color");
    expect(result.standings).toMatchObject({ "contradicted-by-figures": 0 });
  });

  it("contradicts nothing where the rule holds, or there is no claim", () => {
    const recent = tire("wheels.tire-identification", { kind: "code", text: "0VNE HKTA 0526" });
    expect(
      at(analyze(statement([claimedNew]), inspection([recent]), sheet), "wheels.tire-age")?.standing,
    ).toBe("unseen");
    expect(analyze(statement([]), inspection([oldTire]), sheet).standings["contradicted-by-figures"]).toBe(0);
  });

  it("completes readings with q-values and how many would settle them", () => {
    const tools = { instruments: [{ id: "gauge", name: "gauge" }] };
    const a = statement([psi(150, "cylinder-1"), psi(150, "cylinder-2")], tools);
    const b = inspection([psi(100, "cylinder-1"), psi(140, "cylinder-2")], tools);
    const figures = analyze(a, b, sheet).entries.flatMap((entry) =>
      entry.figures?.of === "reading" ? entry.figures : [],
    );
    expect(figures.map(({ qValue, pValue }) => qValue !== null && qValue >= pValue)).toEqual([true, true]);
    expect(figures.map(({ settle }) => settle?.b !== undefined)).toEqual([false, true]);
  });

  it("orders by the owner's cost table", () => {
    const items = ["interior.headliner", "engine.finish"];
    const graded = (value: string) =>
      items.map((item) => finding(item, { kind: "grade", scale: "house", value }));
    const [a, b] = [statement(graded("as-new")), inspection(graded("spent"))];
    const rows = items.map((item, index) => ({
      row: sheet.items.get(item)?.item.costRow ?? "",
      words: item,
      per: "place" as const,
      low: 0,
      likely: 100 * (index + 1),
      high: 1_000,
      occurs: { differ: 1 },
    }));
    const costs: AnalyzeOptions["costs"] = {
      format: "evenhand-cost-table",
      version: 1,
      name: "invented",
      currency: "USD",
      correlationWithinSection: 0,
      rows,
    };
    expect(itemsOf(analyze(a, b, sheet))).toEqual(items);
    expect(itemsOf(analyze(a, b, sheet, { costs }))).toEqual(items.toReversed());
  });

  it("changes neither report nor what another analysis was given", () => {
    const [a, b] = [statement([claimedNew, horn("yes")]), inspection([oldTire])];
    const before = JSON.stringify([a, b]);
    const first = JSON.stringify(analyze(a, b, sheet));
    expect(JSON.stringify(analyze(a, b, sheet))).toBe(first);
    expect(JSON.stringify([a, b])).toBe(before);
  });
});
