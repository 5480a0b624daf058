import { readFileSync } from "node:fs";
import { normalDeviate, seededRandom } from "@evenhand/measurement/random";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { FindingInput } from "@evenhand/shared/finding";
import { Report } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, it } from "vitest";
import { choice, code, reading, report } from "../../testing/small-report.ts";
import { crossChecks } from "./index.ts";

const sheet = compileSheet(sheetVersion1);
const folder = new URL("../../../../fixtures/demo/reports/", import.meta.url);
const demo = (name: string): Report =>
  Report.parse(JSON.parse(readFileSync(new URL(`${name}.json`, folder), "utf8")));
const checksOf = (a: Report, b: Report): CrossCheck[] => crossChecks(a, b, sheet);

type Random = () => number;
const CHARACTERS = "ABCDEFGHJKLMNPRSTUVWXYZ0123456789";

/** One slip of a person who copies a code: another character of the same kind, one dropped, one doubled, or two exchanged. */
const misread = (text: string, random: Random): string => {
  const at = Math.floor(random() * text.length);
  const [before, character, after] = [text.slice(0, at), text[at] ?? "", text.slice(at + 1)];
  const kind = random();
  if (kind < 0.1) return before + after;
  if (kind < 0.2) return before + character + character + after;
  if (kind < 0.3) return before + after.slice(0, 1) + character + after.slice(1);
  const alike = CHARACTERS.split("").filter(
    (each) => /\d/.test(each) === /\d/.test(character) && each !== character,
  );
  return before + (alike[Math.floor(random() * alike.length)] ?? "") + after;
};

const withSlips = (told: Report, share: number, random: Random): Report => ({
  ...told,
  findings: told.findings.map((finding) =>
    finding.answer.kind === "code" && finding.answer.text !== "" && random() < share
      ? { ...finding, answer: { ...finding.answer, text: misread(finding.answer.text, random) } }
      : finding,
  ),
});

/** What accuses: a claim that falls, graver than a trifle; one place by itself is no matter of the dealer's. */
const accusations = (checks: readonly CrossCheck[]): string[] =>
  checks
    .filter(
      ({ verdict, strength, severity }) =>
        verdict === "breaks" && strength === "contradicts" && severity !== "small",
    )
    .map(({ rule, reason, claim, reads }) => `${rule} ${reason} ${claim?.item ?? reads[0]?.item}`);

const PAIRS = 400;
const SLIPS = 0.015;

describe("two careful people whose codes are misread now and then", { timeout: 300_000 }, () => {
  it("are accused by a rule in no more than 3 % of pairs", () => {
    const [a, b] = [demo("larksong-statement"), demo("larksong-inspection")];
    const known = new Set(accusations(checksOf(a, b)));
    const random = seededRandom(7);
    let accused = 0;
    for (let pair = 0; pair < PAIRS; pair += 1) {
      const checks = checksOf(withSlips(a, SLIPS, random), withSlips(b, SLIPS, random));
      const more = accusations(checks).filter((each) => !known.has(each));
      if (more.length > 0) accused += 1;
    }
    expect(accused / PAIRS).toBeLessThanOrEqual(0.03);
  });
});

type Lie = (random: Random) => {
  readonly stated: FindingInput[];
  readonly found: FindingInput[];
  readonly rules: string[];
};
const LIES = 300;
const between = (random: Random, low: number, high: number): number => low + (high - low) * random();
const near = (random: Random, truth: number, scatter: number, count: number): number[] =>
  Array.from({ length: count }, () => Math.round(truth + scatter * normalDeviate(random)));

const rolled: Lie = (random) => {
  const shown = Math.round(between(random, 18_000, 80_000));
  const older = Math.round(between(random, shown + 2000, 99_000));
  const five = { "odometer-digits": 5 };
  return {
    stated: [
      choice("identity.odometer-disclosure", "actual"),
      reading("identity.odometer", "mi", [shown], "", five),
    ],
    found: [
      reading("identity.odometer", "mi", [shown + 3], "", five),
      reading("identity.odometer-on-papers", "mi", [older], "", { "entry-date": "1998-03-02" }),
    ],
    rules: ["actual-miles", "odometer"],
  };
};

/** Evenly tired, or one cylinder gone, or uneven. */
const tired: Lie = (random) => {
  const kind = random();
  const level = kind < 0.4 ? between(random, 55, 92) : between(random, 125, 165);
  const share = kind < 0.4 ? 1 : kind < 0.7 ? between(random, 0.45, 0.68) : between(random, 0.7, 0.76);
  const found = Array.from({ length: 6 }, (_, cylinder) =>
    reading(
      "engine.compression",
      "psi",
      near(random, cylinder === 2 ? level * share : level, 3, 2),
      `cylinder-${cylinder + 1}`,
    ),
  );
  return { stated: [choice("engine.rebuild-claim", "rebuilt-with-bills")], found, rules: ["rebuilt-engine"] };
};

const PANELS = ["hood", "roof", "trunk-lid", "left-front-door", "right-front-door", "right-front-fender"];
const resprayed: Lie = (random) => {
  const base = between(random, 80, 110);
  return {
    stated: [choice("body.paint-history", "original", "left-front-fender")],
    found: [
      ...PANELS.map((panel) =>
        reading("body.paint-thickness", "um", near(random, base + 6 * normalDeviate(random), 3, 3), panel),
      ),
      reading("body.paint-thickness", "um", near(random, 180, 4, 3), "left-front-fender"),
    ],
    rules: ["original-paint"],
  };
};

describe("original paint as factories laid it, one panel thicker than another", () => {
  it("is accused in no more than 3 % of cars", () => {
    const random = seededRandom(5);
    const claim = choice("body.paint-history", "original", "hood");
    let accused = 0;
    for (let car = 0; car < LIES; car += 1) {
      const base = between(random, 80, 120);
      const panels = PANELS.map((panel) =>
        reading("body.paint-thickness", "um", near(random, base + 8 * normalDeviate(random), 3, 3), panel),
      );
      const checks = checksOf(report([claim]), report(panels, { kind: "inspection" }));
      if (accusations(checks).length > 0) accused += 1;
    }
    expect(accused / LIES).toBeLessThanOrEqual(0.03);
  });
});

const digits = (random: Random, count: number): string =>
  Array.from({ length: count }, () => Math.floor(random() * 10)).join("");
const otherEngine: Lie = (random) => {
  const plate = code("identity.vin", `TM467R${digits(random, 5)}`, "main-plate");
  const stamp = code("identity.partial-vin", `R67${digits(random, 5)}`, "engine");
  return {
    stated: [plate, choice("identity.originality", "original-to-car", "engine"), stamp],
    found: [plate, stamp],
    rules: ["number-ends-alike"],
  };
};

describe("lies that figures or numbers give away", { timeout: 300_000 }, () => {
  it.each<[string, Lie]>([
    ["a rolled odometer of five digits, with papers", rolled],
    ["an engine called rebuilt that is tired", tired],
    ["a panel called original that was resprayed to 180 µm", resprayed],
    ["another engine, its stamp read by both", otherEngine],
  ])("%s: at least 90 % found", (_, lie) => {
    const random = seededRandom(11);
    let found = 0;
    for (let draw = 0; draw < LIES; draw += 1) {
      const told = lie(random);
      const checks = checksOf(report(told.stated), report(told.found, { kind: "inspection" }));
      if (checks.some(({ rule, verdict }) => told.rules.includes(rule) && verdict === "breaks")) found += 1;
    }
    expect(found / LIES).toBeGreaterThanOrEqual(0.9);
  });
});
