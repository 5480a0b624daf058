import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, it } from "vitest";
import { choice, reading, report } from "../../testing/small-report.ts";
import { crossChecks } from "../cross-checks/index.ts";
import { oneFact } from "./index.ts";

const at = (item: string, position = "", side: "a" | "b" = "b"): EntryReference => ({ side, item, position });
const ratio = at("driveline.axle-ratio", "", "a");
const broken = (rule: string, more: Partial<CrossCheck> = {}): CrossCheck => ({
  rule,
  verdict: "breaks",
  reason: "other-ratio",
  severity: "worth",
  figures: {},
  over: "both-reports",
  strength: "contradicts",
  reads: [at(rule)],
  claim: ratio,
  bad: [],
  decides: [],
  ...more,
});
const undersOf = (...checks: CrossCheck[]) => oneFact(checks).map(({ under }) => under);

describe("one fact is one line", () => {
  it("lets the rule that rests on most readings speak for the others on one claim", () => {
    const combined = broken("ratio-combined", { reads: [at("turns"), at("road")] });
    expect(undersOf(broken("road-ratio"), broken("turns-ratio"), combined)).toEqual([2, 2, undefined]);
  });

  it("lets the gravest speak, and a contradiction before a hint", () => {
    expect(undersOf(broken("date-correct"), broken("partial-vin", { severity: "halt" }))).toEqual([
      1,
      undefined,
    ]);
    expect(
      undersOf(broken("wear-miles", { strength: "hint", reads: [at("a"), at("b")] }), broken("odometer")),
    ).toEqual([1, undefined]);
  });

  it("keeps apart what is claimed of other places, what holds, and what no claim joins", () => {
    const other = broken("tire-age", { claim: at("wheels.tire-age", "left-rear", "a") });
    expect(undersOf(broken("tire-age"), other)).toEqual([undefined, undefined]);
    expect(undersOf(broken("turns-ratio"), broken("road-ratio", { verdict: "holds" }))).toEqual([
      undefined,
      undefined,
    ]);
    expect(undersOf(broken("square", { claim: null }), broken("paint-map", { claim: null }))).toEqual([
      undefined,
      undefined,
    ]);
  });

  it("joins compression by level and by spread on one engine, called rebuilt or not", () => {
    const cylinders = [60, 62, 45, 61].map((psi, index) =>
      reading("engine.compression", "psi", [psi, psi], `cylinder-${index + 1}`, {
        warm: true,
        "throttle-open": true,
      }),
    );
    const stated = report([choice("engine.rebuild-claim", "rebuilt")]);
    const found = report(cylinders, { kind: "inspection" });
    const checks = crossChecks(stated, found, compileSheet(sheetVersion1)).filter(
      ({ verdict }) => verdict === "breaks",
    );
    expect(new Set(checks.map(({ rule }) => rule)).size).toBeGreaterThan(1);
    expect(checks.filter(({ under }) => under === undefined)).toHaveLength(1);
  });
});
