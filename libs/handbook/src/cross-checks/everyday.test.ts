import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { FindingInput } from "@evenhand/shared/finding";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, it } from "vitest";
import { choice, code, reading, report } from "../../testing/small-report.ts";
import { sentence } from "../sentence/index.ts";
import { crossChecks } from "./index.ts";

const sheet = compileSheet(sheetVersion1);

/** What a rule says of the dealer's findings and the inspector's. */
const find = (rule: string, stated: readonly FindingInput[], found: readonly FindingInput[]) => {
  const [a, b] = [report(stated), report(found, { kind: "inspection" })];
  const checks = crossChecks(a, b, sheet);
  return checks.filter((check) => check.rule === rule);
};
const said = (check: CrossCheck | undefined): string => (check === undefined ? "" : sentence(check));
const compression = (...psi: number[]) =>
  psi.map((value, index) =>
    reading("engine.compression", "psi", [value, value], `cylinder-${index + 1}`, {
      throttle: "open",
      engine: "warm",
    }),
  );

describe("everyday situations that the handbook decides", () => {
  it("an engine called rebuilt with 150/140/155/90 has a failed cylinder", () => {
    const [check, ...more] = find(
      "rebuilt-engine",
      [choice("engine.rebuild-claim", "rebuilt")],
      compression(150, 140, 155, 90),
    );
    expect(more).toEqual([]);
    expect(check).toMatchObject({
      verdict: "breaks",
      reason: "failed-cylinder",
      severity: "worth",
      decides: [{ side: "a", item: "engine.rebuild-claim", position: "" }],
    });
    expect(said(check)).toContain("cylinder 4 has 90");
  });

  it("an engine called rebuilt with 60 all round is tired, however even", () => {
    const [check] = find(
      "rebuilt-engine",
      [choice("engine.rebuild-claim", "rebuilt-with-bills")],
      compression(60, 60, 60, 60),
    );
    expect(check).toMatchObject({ verdict: "breaks", reason: "tired" });
    expect(said(check)).toContain("Evenly tired is still tired");
  });

  it("five digits and a higher older paper: the miles shown cannot be actual", () => {
    const five = { "odometer-digits": 5 };
    const [check] = find(
      "actual-miles",
      [
        choice("identity.odometer-disclosure", "actual"),
        reading("identity.odometer", "mi", [61_240], "", five),
      ],
      [
        reading("identity.odometer", "mi", [61_244], "", five),
        reading("identity.odometer-on-papers", "mi", [97_410], "", { "entry-date": "1986-03-02" }),
      ],
    );
    expect(check).toMatchObject({
      verdict: "breaks",
      reason: "called-actual-but-lower",
      severity: "worth",
      decides: [{ side: "a", item: "identity.odometer-disclosure" }],
    });
    expect(said(check)).toContain("161,244 mi");
  });

  it("a stamp of another number where the numbers are said to match is halt once both read it", () => {
    const plate = code("identity.vin", "TM467R20871", "main-plate");
    const stated = [choice("identity.originality", "original-to-car", "engine"), plate];
    const stamp = code("identity.partial-vin", "R6731196", "engine");
    const [once] = find("number-ends-alike", stated, [stamp]);
    expect(once).toMatchObject({ verdict: "cannot-tell", reason: "read-again", severity: "halt", bad: [] });
    const [twice] = find("number-ends-alike", [...stated, stamp], [stamp, plate]).filter(
      ({ claim }) => claim !== null,
    );
    expect(twice).toMatchObject({ verdict: "breaks", reason: "said-to-match", severity: "halt" });
  });

  it("a stamp that ends otherwise asks, and accuses nobody, where nothing is claimed", () => {
    const [check] = find("number-ends-alike", [], [code("identity.partial-vin", "R6731196", "engine")]);
    expect(check).toMatchObject({
      verdict: "cannot-tell",
      reason: "not-alike",
      severity: "worth",
      decides: [],
    });
    expect(said(check)).toContain("not shown to be this car's");
  });

  it("a panel of 24 mil is named on a car where nothing else was measured", () => {
    const [check] = find(
      "paint-map",
      [],
      [reading("body.paint-thickness", "um", [610, 612, 608], "right-front-fender")],
    );
    expect(check).toMatchObject({
      verdict: "breaks",
      severity: "worth",
      bad: [{ side: "b", item: "body.paint-thickness", position: "right-front-fender" }],
    });
  });

  it("a panel within a factory finish that stands over the others was painted again", () => {
    const panels = ["hood", "roof", "trunk-lid", "left-front-door", "right-front-door"];
    const [check] = find(
      "original-paint",
      [choice("body.paint-history", "original", "left-front-fender")],
      [
        ...panels.map((panel) => reading("body.paint-thickness", "um", [76, 78, 77], panel)),
        reading("body.paint-thickness", "um", [189, 191, 190], "left-front-fender"),
      ],
    );
    expect(check).toMatchObject({ verdict: "breaks", reason: "over-the-others", severity: "worth" });
  });

  it("a factory finish stands over no panels that read thinner than any such finish", () => {
    const panels = ["hood", "roof", "trunk-lid", "left-front-door", "right-front-door"];
    const [check] = find(
      "original-paint",
      [choice("body.paint-history", "original", "left-front-fender")],
      [
        ...panels.map((panel) => reading("body.paint-thickness", "um", [29, 28, 30], panel)),
        reading("body.paint-thickness", "um", [100, 101, 99], "left-front-fender"),
      ],
    );
    expect(check?.verdict).not.toBe("breaks");
  });

  it("one tire number that both people read gives one line", () => {
    const number = code("wheels.tire-identification", "0VNE HKTA 1208", "left-rear");
    expect(find("tire-age", [number], [number])).toHaveLength(1);
  });
});
