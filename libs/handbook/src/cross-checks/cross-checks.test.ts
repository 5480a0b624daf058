import { CrossCheck } from "@evenhand/shared/cross-check";
import type { EntryReference } from "@evenhand/shared/cross-check";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, it } from "vitest";
import { choice, code, reading, report } from "../../testing/small-report.ts";
import { honest, maker, modern, overstated } from "../../testing/stories.ts";
import { sentence } from "../sentence/index.ts";
import { crossChecks, singleReportChecks } from "./index.ts";

const sheet = compileSheet(sheetVersion1);
const breaking = (checks: readonly CrossCheck[]) =>
  [...new Set(checks.filter(({ verdict }) => verdict === "breaks").map(({ rule }) => rule))].toSorted();

const place = ({ side, item, position }: EntryReference) =>
  `${side} ${item}${position === "" ? "" : `@${position}`}`;

/** One line a check: what it says, of which claim, from which findings. */
const lines = (checks: readonly CrossCheck[]): string =>
  checks
    .map((check) =>
      [
        `${check.rule} ${check.verdict} ${check.reason}`,
        `claim ${check.claim === null ? "none" : place(check.claim)}`,
        `reads ${check.reads.map(place).join(", ")}`,
        sentence(check),
      ].join("\n  "),
    )
    .join("\n");

const dated = (text: string) =>
  told(
    code("identity.build-date", "1958-03-03"),
    code("identity.date-code", text, "block"),
    choice("identity.originality", "original-to-car", "engine"),
  );

const brokenBy = (text: string) =>
  crossChecks(dated(text), dated(text), sheet).filter(({ verdict }) => verdict === "breaks");

describe("singleReportChecks", () => {
  it.each([
    ["honest", honest],
    ["overstated", overstated],
    ["modern", modern],
  ])("reads the %s car as the golden file has it", async (name, car) => {
    const checks = singleReportChecks(car, sheetVersion1, { maker });
    for (const check of checks) expect(CrossCheck.parse(check)).toEqual(check);
    await expect(`${lines(checks)}\n`).toMatchFileSnapshot(`${name}.golden.txt`);
  });

  it("leaves out, rule by rule, what the sheet does not have", async () => {
    const before = named(singleReportChecks(honest, sheetVersion1, { maker }));
    const text = sheetVersion1.items
      .filter(({ id, answer }) => (answer === "reading" || answer === "color") && honestItems.has(id))
      .map(({ id }) => {
        const lacking = { ...sheetVersion1, items: sheetVersion1.items.filter((item) => item.id !== id) };
        const after = named(singleReportChecks(honest, lacking, { maker }));
        const gone = [...before].filter((name) => !after.has(name)).map((name) => `\n  - ${name}`);
        const come = [...after].filter((name) => !before.has(name)).map((name) => `\n  + ${name}`);
        return [id, ...gone, ...come].join("");
      });
    await expect(`${text.join("\n")}\n`).toMatchFileSnapshot("lacking.golden.txt");
  });

  it("breaks nothing on an honest car", () => {
    expect(breaking(singleReportChecks(honest, sheetVersion1, { maker }))).toEqual([]);
  });

  it("catches an overstated car by far more than eight rules, from its own statement alone", () => {
    expect(breaking(singleReportChecks(overstated, sheetVersion1, { maker })).length).toBeGreaterThan(25);
  });

  it("says nothing of an empty report", () => {
    expect(singleReportChecks(report([]), sheetVersion1)).toEqual([]);
  });
});

/** Checks by rule, reason and what they read first, and how much. */
const named = (checks: readonly CrossCheck[]): ReadonlySet<string> =>
  new Set(
    checks.map(
      ({ rule, reason, reads }) =>
        `${rule} ${reason} by ${reads.length} from ${reads[0]?.item}@${reads[0]?.position}`,
    ),
  );

const honestItems = new Set(honest.findings.map(({ item }) => item));

const plain = (list: readonly CrossCheck[]) =>
  list.map(({ rule, reason, claim }) => `${rule} ${reason} ${claim?.position}`).toSorted();

const told = (...findings: Parameters<typeof report>[0]) => report(findings);

describe("crossChecks", () => {
  it("tests the claims of A against the readings of B", () => {
    const a = told(
      reading("driveline.axle-ratio", "1", [3.58]),
      code("wheels.tire-size", "P205/75R15", "left-rear"),
    );
    const b = told(
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
    const a = told(reading("electrics.volts-cranking", "V", [8.1, 8.2]));
    expect(crossChecks(a, told(), sheet).map(({ rule, reason }) => `${rule} ${reason}`)).toEqual([
      "cranking too-low",
    ]);
  });

  it.each(["7958-01-20", "1458-01-20"])(
    "takes %s, a date of no car or after it was read, for none",
    (date) => {
      expect(brokenBy("1961-01-20")).not.toEqual([]);
      expect(brokenBy(date)).toEqual([]);
    },
  );

  it("names the misread side as the one contradicted", () => {
    const later = { ...report([]).vehicle, modelYear: 2003, identification: "0EVTL82633A007146" };
    const of = (text: string) => {
      const made = report([code("identity.vin", text, "main-plate")], { vehicle: later });
      return made;
    };
    const checks = crossChecks(of("0EVTL82633A007146"), of("0EVTL8Z633A007146"), sheet);
    expect(checks.find(({ rule }) => rule === "vin-reading")).toMatchObject({
      reason: "second-misread",
      claim: { side: "b" },
    });
  });

  it("keeps a firm's own figure and says so", () => {
    const a = told(code("wheels.tire-identification", "0VNE HKTA 2518", "spare"));
    const [check] = crossChecks(a, told(), sheet, { firm: { "tire-age.caution-years": 9 } });
    expect(check).toMatchObject({ rule: "tire-age", reason: "young" });
    expect(check?.limits?.[0]).toEqual({ id: "tire-age.caution-years", value: 9, unit: "a", origin: "firm" });
  });

  it("does not depend on the order of findings", () => {
    const made = overstated;
    const turned = { ...made, findings: made.findings.toReversed() };
    const checks = singleReportChecks(made, sheetVersion1, { maker });
    const other = singleReportChecks(turned, sheetVersion1, { maker });
    expect(plain(other)).toEqual(plain(checks));
  });

  it("reads an overstated statement against an honest inspection as the golden file has it", async () => {
    const inspection = { ...honest, kind: "inspection" as const };
    const checks = crossChecks(overstated, inspection, sheet, { maker });
    await expect(`${lines(checks)}\n`).toMatchFileSnapshot("overstated-against-honest.golden.txt");
  });

  it("marks as over both reports every rule that read both", () => {
    const a = overstated;
    const b = honest;
    const across = crossChecks(a, b, sheet, { maker }).filter(
      ({ reads }) => new Set(reads.map(({ side }) => side)).size > 1,
    );
    expect(across.length).toBeGreaterThan(8);
    expect(across.filter(({ over }) => over === "one-report")).toEqual([]);
  });
});
