import type { CrossCheck } from "@evenhand/shared/cross-check";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, it } from "vitest";
import { choice, code, reading, report } from "../../testing/small-report.ts";
import { honest, maker, overstated } from "../../testing/stories.ts";
import { sentence } from "../sentence/index.ts";
import { crossChecks, singleReportChecks } from "./index.ts";

const sheet = compileSheet(sheetVersion1);
const told = (...findings: Parameters<typeof report>[0]) => report(findings);
const of = (checks: readonly CrossCheck[], rule: string) => checks.find((check) => check.rule === rule);

describe("what a break makes bad and decides", () => {
  it("is said of every break, and of nothing that holds", () => {
    const checks = [honest, overstated].flatMap((car) => singleReportChecks(car, sheetVersion1, { maker }));
    const breaking = checks.filter(({ verdict }) => verdict === "breaks");
    const holding = checks.filter(({ verdict }) => verdict === "holds");
    expect(breaking.length).toBeGreaterThan(25);
    expect(breaking.filter(({ severity }) => severity === null)).toEqual([]);
    expect(holding.filter(({ severity, bad }) => severity !== null || bad.length > 0)).toEqual([]);
  });

  it("names the low cylinder and not its neighbors", () => {
    const pressures = [150, 140, 155, 90].map((value, index) =>
      reading("engine.compression", "psi", [value, value], `cylinder-${index + 1}`),
    );
    const check = of(crossChecks(told(), told(...pressures), sheet), "compression");
    expect(check).toMatchObject({
      severity: "worth",
      bad: [{ side: "b", item: "engine.compression", position: "cylinder-4" }],
      decides: [],
    });
  });

  it("names the claim that falls", () => {
    const stated = told(choice("body.paint-history", "original", "hood"));
    const found = told(reading("body.paint-thickness", "um", [420, 430, 425], "hood"));
    expect(of(crossChecks(stated, found, sheet), "original-paint")).toMatchObject({
      severity: "worth",
      bad: [{ side: "b", item: "body.paint-thickness", position: "hood" }],
      decides: [{ side: "a", item: "body.paint-history", position: "hood" }],
    });
  });

  it("names the number that stands in fewer places, and whose report each stands in", () => {
    const numbers = [
      code("identity.vin", "TM467R20871", "main-plate"),
      code("identity.vin", "TM467R20871", "body-tag"),
      code("identity.title-number", "TM467R20899"),
    ];
    const found = report(numbers, { kind: "inspection" });
    const across = crossChecks(told(...numbers), found, sheet).filter(
      ({ rule, reads }) => rule === "same-number" && reads.length === 6,
    );
    expect(across).toMatchObject([
      {
        verdict: "breaks",
        bad: [
          { side: "b", item: "identity.title-number" },
          { side: "a", item: "identity.title-number" },
        ],
      },
    ]);
    const said = across.map(sentence).join("");
    expect(said).toContain("title (statement)");
    expect(said).toContain("body tag (inspection)");
  });

  it("names the spot that was never painted, where its color is not the tag's", () => {
    const stated = told(code("identity.paint-code", "Y"));
    const found = told(code("doors.first-color", "R"));
    expect(of(crossChecks(stated, found, sheet), "first-color")).toMatchObject({
      claim: { side: "a", item: "identity.paint-code" },
      bad: [{ side: "b", item: "doors.first-color" }],
    });
  });

  it("calls a tire of eighteen years a danger where the dealer is silent", () => {
    const found = told(code("wheels.tire-identification", "0VNE HKTA 1208", "left-rear"));
    expect(of(crossChecks(told(), found, sheet), "tire-age")).toMatchObject({
      reason: "replace-age",
      severity: "danger",
      bad: [{ side: "b", position: "left-rear" }],
    });
  });
});
