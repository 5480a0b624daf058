import { CrossCheck } from "@evenhand/shared/cross-check";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, it } from "vitest";
import { choice, code, grade, reading, report } from "../../testing/small-report.ts";
import { sentence } from "../sentence/index.ts";
import { crossChecks, indexFindings, singleReportChecks } from "./index.ts";

const sheet = compileSheet(sheetVersion1);
const maker = {
  axleRatios: [3.23, 3.58, 3.73],
  stampFrom: { engine: "1{6}{7}{8-13}" },
  chassisPattern: "13###7[NQ]######",
  dateForms: { axle: { form: "Mdy", from: 1955, to: 1979 } },
};
const overstated = [
  code("identity.vin", "136677N104512", "main-plate"),
  code("identity.title-number", "136677N104599"),
  code("identity.build-date", "1967-03-20"),
  code("identity.date-code", "1969-08", "block"),
  code("identity.date-code", "A 15 7", "axle"),
  code("identity.bill-date", "2015-06", "alternator"),
  code("identity.date-code", "2018-02", "alternator"),
  code("identity.partial-vin", "19N209981", "engine"),
  choice("identity.originality", "original-to-car", "engine"),
  choice("engine.rebuild-claim", "never"),
  code("wheels.tire-identification", "U2LL LMLR 2518", "left-front"),
  choice("wheels.tire-age", "new", "left-front"),
  code("wheels.tire-identification", "U2LL LMLR 2518", "right-front"),
  choice("wheels.tire-age", "under-three-years", "right-front"),
  code("wheels.tire-size", "G78-15", "left-rear"),
  choice("wheels.tire-construction", "bias", "left-rear"),
  code("wheels.tire-size", "P205/75R15", "left-front"),
  choice("body.paint-history", "original", "hood"),
  reading("body.paint-thickness", "um", [420, 440, 410], "hood"),
  reading("driveline.axle-ratio", "1", [3.58]),
  reading("driveline.ring-teeth", "1", [42]),
  reading("driveline.pinion-teeth", "1", [13]),
  reading("engine.bore", "in", [4]),
  reading("engine.stroke", "in", [3.48]),
  reading("engine.displacement", "in3", [327]),
  reading("identity.odometer", "mi", [46_200], "", { "odometer-digits": 6 }),
  reading("identity.odometer-on-papers", "mi", [91_000], "entry-1", { "entry-date": "2010-02-03" }),
  grade("interior.pedals", "spent", "brake"),
  choice("identity.odometer-disclosure", "exempt"),
];

const breaking = (checks: readonly CrossCheck[]) =>
  [...new Set(checks.filter(({ verdict }) => verdict === "breaks").map(({ rule }) => rule))].toSorted();

describe("singleReportChecks", () => {
  it("catches an overstated car by many rules, from its own statement alone", () => {
    const own = report(overstated, {
      vehicle: { ...report([]).vehicle, form: { ...report([]).vehicle.form, cylinders: 8 } },
    });
    const checks = singleReportChecks(own, sheetVersion1, { maker });
    expect(breaking(checks)).toEqual([
      "claims-against-dates",
      "date-correct",
      "date-order",
      "displacement",
      "odometer",
      "original-paint",
      "partial-vin",
      "same-number",
      "teeth",
      "tire-age",
      "tires-mixed",
    ]);
    for (const check of checks) {
      expect(CrossCheck.parse(check)).toEqual(check);
      expect(sentence(check)).not.toMatch(/[{}]/);
      expect(check.reads.every(({ side }) => side === "a")).toBe(true);
    }
  });

  it("says nothing of an empty report", () => {
    expect(singleReportChecks(report([]), sheetVersion1)).toEqual([]);
  });
});

const plain = (list: readonly CrossCheck[]) =>
  list.map(({ rule, reason, claim }) => `${rule} ${reason} ${claim?.position}`).toSorted();

const indexed = (...findings: Parameters<typeof report>[0]) => {
  const made = report(findings);
  return { report: made, index: indexFindings(made) };
};

describe("crossChecks", () => {
  it("tests the claims of A against the readings of B", () => {
    const a = indexed(
      reading("driveline.axle-ratio", "1", [3.58]),
      code("wheels.tire-size", "P205/75R15", "left-rear"),
    );
    const b = indexed(
      reading("road.revolutions", "rpm", [2475, 2480, 2485]),
      reading("road.gps-speed", "km/h", [96.5, 96.6, 96.7]),
      reading("road.gear-ratio", "1", [1]),
      reading("driveline.axle-turns", "1", [1.61, 1.62], "", { "both-wheels": false }),
    );
    const checks = crossChecks(a, b, sheet, { maker });
    expect(checks.map(({ rule, reason, claim }) => [rule, reason, claim?.item])).toEqual([
      ["road-ratio", "other-ratio", "driveline.axle-ratio"],
      ["turns-ratio", "other-ratio", "driveline.axle-ratio"],
      ["ratio-combined", "other-ratio", "driveline.axle-ratio"],
    ]);
    expect(checks[0]?.reads).toContainEqual({ side: "a", item: "wheels.tire-size", position: "left-rear" });
    expect(checks[0]?.reads).toContainEqual({ side: "b", item: "road.gps-speed", position: "" });
    expect(checks[0]?.claim).toEqual({ side: "a", item: "driveline.axle-ratio", position: "" });
  });

  it("runs a check once where both views read the same findings", () => {
    const a = indexed(reading("electrics.volts-cranking", "V", [8.1, 8.2]));
    expect(crossChecks(a, indexed(), sheet).map(({ rule, reason }) => `${rule} ${reason}`)).toEqual([
      "cranking too-low",
    ]);
  });

  it("names the misread side as the one contradicted", () => {
    const modern = { ...report([]).vehicle, modelYear: 2003, identification: "1HGCM82633A004352" };
    const of = (text: string) => {
      const made = report([code("identity.vin", text, "main-plate")], { vehicle: modern });
      return { report: made, index: indexFindings(made) };
    };
    const checks = crossChecks(of("1HGCM82633A004352"), of("1HGCM8Z633A004352"), sheet);
    expect(checks.find(({ rule }) => rule === "vin-reading")).toMatchObject({
      reason: "second-misread",
      claim: { side: "b" },
    });
  });

  it("keeps a firm's own figure and says so", () => {
    const a = indexed(code("wheels.tire-identification", "U2LL LMLR 2518", "spare"));
    const [check] = crossChecks(a, indexed(), sheet, { firm: { "tire-age.caution-years": 9 } });
    expect(check).toMatchObject({ rule: "tire-age", reason: "young" });
    expect(check?.limits?.[0]).toEqual({ id: "tire-age.caution-years", value: 9, unit: "a", origin: "firm" });
  });

  it("does not depend on the order of findings", () => {
    const made = report(overstated);
    const turned = { ...made, findings: made.findings.toReversed() };
    const checks = singleReportChecks(made, sheetVersion1, { maker });
    const other = singleReportChecks(turned, sheetVersion1, { maker });
    expect(plain(other)).toEqual(plain(checks));
  });
});
