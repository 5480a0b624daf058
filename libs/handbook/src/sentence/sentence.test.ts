import { placesOf } from "@evenhand/message/format-message";
import { RuleResult } from "@evenhand/shared/cross-check";
import { describe, expect, it } from "vitest";
import { charging } from "../charging/index.ts";
import { dayOf } from "../day/index.ts";
import { exactly } from "../interval/index.ts";
import { tireAge } from "../tire-age/index.ts";
import { rules } from "../rules/index.ts";
import { placeOfLimit, sentence } from "./index.ts";

const cases = rules.flatMap((rule) =>
  Object.entries(rule.examples).map(([reason, answer]) => [rule.id, reason, answer, rule] as const),
);

/** Ten digits: the last ones of a floating-point number are the machine's own. */
const brief = (_: string, value: unknown): unknown =>
  typeof value === "number" ? Number(value.toPrecision(10)) : value;

/** A tire of three years, by whatever limits. */
const young = (firm = {}): string => sentence(tireAge({ number: "0123", visit: dayOf(2026, 5, 4) }, firm));

describe("sentence", () => {
  it.each(cases)("%s answers %s", (id, reason, answer, rule) => {
    const result = answer();
    expect(result.rule).toBe(id);
    expect(result.reason).toBe(reason);
    expect(result.verdict).toBe(rule.outcomes[reason]?.verdict);
    expect(RuleResult.parse(result)).toEqual(result);
    expect(rule.limits).toEqual(expect.arrayContaining(result.limits?.map((limit) => limit.id) ?? []));
  });

  it("gives each the sentence in the golden file", async () => {
    const text = cases
      .map(([rule, reason, answer]) => `${rule} | ${reason} | ${sentence(answer())}`)
      .join("\n");
    await expect(`${text}\n`).toMatchFileSnapshot("sentences.golden.txt");
  });

  it("gives each the figures, ranges, words, alternatives and limits in the golden file", async () => {
    const text = cases.map(([, , answer]) => JSON.stringify(answer(), brief)).join("\n");
    await expect(`${text}\n`).toMatchFileSnapshot("results.golden.txt");
  });

  it.each(cases)("%s, %s: only a regulation's figure is required or allowed", (_, __, answer, rule) => {
    const words = `${sentence(answer())} ${rule.formula} ${rule.note ?? ""}`;
    const isRegulated = rule.source.kind === "regulation" || /\b49 CFR\b/.test(rule.source.text);
    expect(!isRegulated && /\b(required|allowed|permitted|must)\b/.test(words)).toBe(false);
  });

  it.each(cases)("%s, %s: a figure of practice is printed as one", (_, reason, answer, rule) => {
    const result = answer();
    const { all } = placesOf(rule.outcomes[reason]?.says ?? "");
    const printed: readonly string[] = rule.limits.filter((id) => all.includes(`limit${placeOfLimit(id)}`));
    const ofPractice = (result.limits ?? []).filter(
      ({ id, origin }) => origin === "common-practice" && printed.includes(id),
    );
    const said = sentence(result).match(/\(common practice\)/g) ?? [];
    expect(said.length).toBeGreaterThanOrEqual(ofPractice.length);
  });

  it.each([
    ["charging", "13.5 to 14.8 V (common practice)"],
    ["charging", "6.9 to 7.4 V (common practice)"],
    ["vacuum", "17 to 21 inHg (common practice)"],
  ])("%s: says the band it judges by, and that it is practice", (id, band) => {
    const said = cases.flatMap(([rule, , answer]) => (rule === id ? sentence(answer()) : []));
    expect(said.filter((each) => each.includes(band)).length).toBeGreaterThan(0);
  });

  it("says a firm's own band as the firm's, and not as practice", () => {
    const own = charging(
      { volts: exactly(15.2), engineSpeed: 1800, system: 12, machine: "alternator" },
      { "charging.low-12": 13.6, "charging.high-12": 14.6 },
    );
    expect(sentence(own)).toMatch(/overcharges; 13\.6 to 14\.6 V is usual\. Judged by the firm's own figure/);
  });

  it("leaves out a part that speaks of what is not there", () => {
    const high = {
      rule: "speedometer",
      verdict: "breaks",
      reason: "reads-high",
      severity: "repair",
    } as const;
    const figures = {
      indicated: { value: 66, unit: "mph" },
      satellite: { value: 60, unit: "mph" },
      error: { value: 10, unit: "%" },
    };
    expect(sentence({ ...high, figures })).toBe("Indicated 66 mph at a true 60 mph: it reads 10% high.");
    expect(
      sentence({ ...high, figures: { ...figures, explainingDiameter: { value: 27.5, unit: "in" } } }),
    ).toBe(
      "Indicated 66 mph at a true 60 mph: it reads 10% high; a tire of 27.5 in over all would explain it.",
    );
  });

  it("says behind itself which figures were a firm's own, and nothing of the handbook's", () => {
    const own = young({ "tire-age.caution-years": 8, "tire-age.replace-years": 12 });
    expect(own).toBe(
      `${young()} Judged by the firm's own figure: caution from this age, 8 years. ` +
        "Judged by the firm's own figure: replace at this age, 12 years.",
    );
    expect(young()).not.toContain("Judged");
  });

  it("refuses a rule, a reason or a figure it does not have", () => {
    const lacking = {
      rule: "cranking",
      verdict: "holds",
      reason: "enough",
      severity: null,
      figures: {},
    } as const;
    expect(() => sentence(lacking)).toThrow("cranking, enough lacks volts");
    expect(() => sentence({ ...lacking, reason: "charges" })).toThrow("no sentence for cranking, charges");
    expect(() => sentence({ ...lacking, rule: "toString" })).toThrow("no sentence for toString, enough");
  });
});
