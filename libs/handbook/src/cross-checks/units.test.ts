import * as fc from "fast-check";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { convert } from "@evenhand/measurement/unit";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, it } from "vitest";
import { honest, maker, overstated } from "../../testing/stories.ts";
import { singleReportChecks } from "./index.ts";

/** Units a reading may as well be written in. */
const OTHERS: Readonly<Partial<Record<UnitSymbol, readonly UnitSymbol[]>>> = {
  mm: ["in", "cm", "m"],
  in: ["mm", "1/32in", "ft"],
  um: ["mil", "mm"],
  psi: ["bar", "kPa", "kgf/cm2"],
  mph: ["km/h", "m/s"],
  "km/h": ["mph"],
  mi: ["km"],
  inHg: ["mmHg", "kPa"],
  V: ["mV"],
  in3: ["cm3", "l"],
  "1/32in": ["mm"],
};

/** The same report, its readings moved by a share and then written in other units. */
const rewritten = (
  report: Report,
  shares: readonly number[],
  picks: readonly number[],
  inOthers: boolean,
): Report => ({
  ...report,
  findings: report.findings.map((finding, index) => {
    const { answer } = finding;
    if (answer.kind !== "reading") return finding;
    const factor = answer.unit === "1" ? 1 : (shares[index % shares.length] ?? 1);
    const others = OTHERS[answer.unit] ?? [];
    const unit =
      (inOthers ? others[(picks[index % picks.length] ?? 0) % others.length] : undefined) ?? answer.unit;
    const values = answer.values.map((value) => ({
      ...value,
      value: convert(value.value * factor, answer.unit, unit),
    }));
    return { ...finding, answer: { ...answer, unit, values } };
  }),
});

const brief = (checks: readonly CrossCheck[]) =>
  checks.map(({ rule, reason, reads }) => `${rule} ${reason} ${reads[0]?.item} ${reads[0]?.position}`);

const shares = fc.array(
  fc.integer({ min: 900, max: 1100 }).map((share) => share / 1000),
  { minLength: 3, maxLength: 12 },
);
const picks = fc.array(fc.nat(5), { minLength: 3, maxLength: 9 });

describe("units", { timeout: 120_000 }, () => {
  it.each([
    ["honest", honest],
    ["overstated", overstated],
  ])("written otherwise, the %s car gets the same answers", (_, car) => {
    fc.assert(
      fc.property(shares, picks, (by, pick) => {
        const plain = singleReportChecks(rewritten(car, by, pick, false), sheetVersion1, { maker });
        const other = singleReportChecks(rewritten(car, by, pick, true), sheetVersion1, { maker });
        expect(brief(other)).toEqual(brief(plain));
      }),
      { numRuns: 1000 },
    );
  });
});
