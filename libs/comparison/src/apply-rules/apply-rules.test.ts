import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { analyze } from "../analyze/index.ts";

const code = (item: string, text: string, position = ""): Finding =>
  finding(item, { kind: "code", text }, { position });
const read = (
  item: string,
  unit: UnitSymbol,
  values: readonly number[],
  position = "",
  conditions?: Finding["conditions"],
): Finding =>
  finding(
    item,
    { kind: "reading", unit, values: values.map((value) => ({ value })) },
    { position, conditions },
  );

/** What is said of one place. */
const lineOf = (stated: Finding[], found: Finding[], item: string, position = ""): Entry | undefined =>
  analyze(statement(stated), inspection(found), sheet).entries.find(
    (entry) => entry.item === item && entry.position === position,
  );

const size = (text: string, position: string) => code("wheels.tire-size", text, position);
const turns = (ratio: number) =>
  read("driveline.axle-turns", "1", [ratio, ratio], "", { "both-wheels": true });
const ratio = (value: number) => read("driveline.axle-ratio", "1", [value]);

const gap = (item: string, value: number) => read(item, "mm", [value], "left-front-door-rear-door");

describe("a broken relation of several places", () => {
  const mixed = [size("195/60R14", "left-front"), size("185/65R14", "right-front")];

  it("is the fault of what was not read alike", () => {
    const stated = [size("195/60R14", "left-front"), size("195/60R14", "right-front")];
    expect(lineOf(stated, mixed, "wheels.tire-size", "left-front")).toMatchObject({
      outcome: "agree",
      marks: [],
      standing: "confirmed",
    });
    expect(lineOf(stated, mixed, "wheels.tire-size", "right-front")?.outcome).toBe("differ");
  });

  it("is bad on both sides where both people read all of it alike, and where the dealer is silent", () => {
    for (const position of ["left-front", "right-front"]) {
      expect(lineOf(mixed, mixed, "wheels.tire-size", position)).toMatchObject({
        outcome: "agree",
        marks: ["both-bad", "by-figures"],
        standing: "agreed-fault",
      });
      expect(lineOf([], mixed, "wheels.tire-size", position)).toMatchObject({
        outcome: "unstated",
        marks: ["by-figures"],
      });
    }
  });

  it("is explained by what is bad by its own yardstick", () => {
    const found = [gap("gaps.width-top", 5), gap("gaps.width-bottom", 14)];
    expect(lineOf([], found, "gaps.width-bottom", "left-front-door-rear-door")).toMatchObject({
      outcome: "unstated",
      severity: "worth",
    });
    expect(lineOf([], found, "gaps.width-top", "left-front-door-rear-door")?.coverageOnly).toBe(true);
  });
});

describe("a claim that figures decide", () => {
  it("falls, and what was read against it is bad", () => {
    expect(lineOf([ratio(3.55)], [turns(3.08)], "driveline.axle-ratio")).toMatchObject({
      outcome: "differ",
      reason: "falls-to-figures",
      marks: ["by-figures"],
    });
    expect(lineOf([ratio(3.55)], [turns(3.08)], "driveline.axle-turns")).toMatchObject({
      outcome: "unstated",
      reason: "found-bad-by-figures",
    });
  });

  it("is borne out where nobody looked at it and the figures speak for it", () => {
    expect(lineOf([ratio(4.2)], [turns(4.2)], "driveline.axle-ratio")).toMatchObject({
      outcome: "consistent",
      reason: "borne-out-by-figures",
      severity: null,
    });
  });

  it("stays unseen where only dates fit, which never show that a part is this car's", () => {
    const claim = finding("wheels.tire-age", { kind: "choice", option: "new" }, { position: "left-front" });
    const recent = code("wheels.tire-identification", "U2LL LMLR 0526", "left-front");
    expect(lineOf([claim], [recent], "wheels.tire-age", "left-front")?.outcome).toBe("unseen");
  });
});

describe("a number one look-alike character apart, of which only the found one passes its check digit", () => {
  // 49 CFR 565.15, the regulation's own example.
  const number = "1G4AH59H45G118341";
  const slip = number.replace("5", "S");

  const car = { ...statement([]).vehicle, modelYear: 1987, market: "North America" } as const;
  const numberOf = (stated: string): Entry | undefined =>
    analyze(
      statement([code("identity.vin", stated, "main-plate")], { vehicle: car }),
      inspection([code("identity.vin", number, "main-plate")], { vehicle: car }),
      sheet,
    ).entries.find(({ item, position }) => item === "identity.vin" && position === "main-plate");

  it("is a slip of the pen, in doubt and small, and no charge", () => {
    const line = numberOf(slip);
    expect(line).toMatchObject({ outcome: "doubtful", reason: "one-look-alike", severity: "small" });
    expect(line?.marks).not.toContain("by-figures");
  });

  it("stays a difference where more than one character is another", () => {
    expect(numberOf(`${number.slice(0, -4)}9006`)).toMatchObject({ outcome: "differ", severity: "halt" });
  });
});
