import { Consequence } from "@evenhand/shared/sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, it } from "vitest";
import { limits } from "../limits/index.ts";
import type { LimitRecord } from "../limits/index.ts";
import { commonPractice } from "../rule-record/index.ts";
import { findRule, rules } from "./index.ts";

const records: readonly (readonly [string, LimitRecord])[] = Object.entries(limits);

describe("the rules of the handbook", () => {
  it("are all there", () => {
    expect(rules).toHaveLength(44);
    expect(new Set(rules.map(({ id }) => id)).size).toBe(44);
    expect(rules.every((rule) => findRule(rule.id) === rule)).toBe(true);
    expect(findRule("constructor")).toBeUndefined();
  });

  it.each(rules)("$id says what it reads, its formula, and its source or that there is none", (rule) => {
    for (const words of [rule.title, rule.reads, rule.formula, rule.source.text])
      expect(words.trim()).not.toBe("");
    expect(Consequence.options).toContain(rule.consequence);
    const named = rule.source.kind === "common-practice" ? /common practice, no source/ : /\w{3}/;
    expect(rule.source.text).toMatch(named);
  });

  it.each(rules)("$id can hold and can stay undecided", ({ outcomes, strength }) => {
    const verdicts = Object.values(outcomes).map(({ verdict }) => verdict);
    expect(verdicts).toContain("holds");
    expect(verdicts).toContain("cannot-tell");
    expect(verdicts).toContain("breaks");
    expect(["contradicts", "hint", "reminder"]).toContain(strength);
  });

  it("name only cautions the sheet has", () => {
    const known = new Set(sheetVersion1.cautions.map(({ id }) => id));
    expect(rules.flatMap(({ cautions }) => cautions).filter((id) => !known.has(id))).toEqual([]);
  });

  it("share a limit only as one and the same", () => {
    for (const rule of rules) for (const id of rule.limits) expect(rule.limitRecords[id]).toBe(limits[id]);
  });

  it.each(records)(
    "%s has a source or the words that it has none, and only the latter is the firm's to set",
    (_, limit) => {
      const { source, firmMaySet, between, value, words } = limit;
      expect(words.length).toBeGreaterThan(5);
      expect(firmMaySet).toBe(source.kind === "common-practice");
      expect(source.text).toMatch(firmMaySet ? new RegExp(`^${commonPractice.text}$`) : /49 CFR \d{3}/);
      expect(between === undefined).toBe(!firmMaySet);
      const [low, high] = between ?? [value, value];
      expect(low).toBeLessThanOrEqual(value);
      expect(high).toBeGreaterThanOrEqual(value);
    },
  );

  it("speak of local law where they judge a limit in use, and of no proof where a thing is called original", () => {
    const noted = rules.filter(({ id }) => id.startsWith("in-use-"));
    expect(noted).toHaveLength(5);
    for (const { note, cautions } of noted) {
      expect(note).toContain("Local inspection law");
      expect(cautions).toContain("local-law");
    }
    const unproved = rules.filter(({ id }) => ["date-correct", "paint-map", "original-paint"].includes(id));
    expect(unproved.map(({ note }) => note?.includes("never"))).toEqual([true, true, true]);
  });
});
