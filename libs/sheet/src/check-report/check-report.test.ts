import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "../sheet-version-1/index.ts";
import { checkReport } from "./index.ts";

type Entry = { [key: string]: unknown };
type Json = {
  [key: string]: unknown;
  findings: Entry[];
  instruments: unknown[];
  persons: unknown[];
  scales: Entry[];
};

function read(name: string): Json {
  return JSON.parse(
    readFileSync(new URL(`../../../../fixtures/sheet/${name}.json`, import.meta.url), "utf8"),
  );
}
const good = read("one-of-each");
const changed = (change: (report: Json) => void): Json => {
  const report = structuredClone(good);
  change(report);
  return report;
};
const problemsOf = (json: unknown) => {
  const check = checkReport(json, sheet);
  return check.ok ? [] : check.problems;
};
const linesOf = (json: unknown) => problemsOf(json).map(({ at, reason }) => `${at}: ${reason}`);

describe("checkReport reads a report", () => {
  it("whole, with what was left out filled in", () => {
    const check = checkReport(good, sheet);
    expect(check.ok && check.report.findings).toHaveLength(good.findings.length);
    expect(check.ok && check.report.vehicle.form.leftHandDrive).toBe(true);
    expect(check.ok && check.report.findings[5]).toMatchObject({
      firmness: "asserted",
      basis: "seen",
      position: "",
    });
    expect(check.advisories).toEqual([]);
  });

  it("and says what conditions are not noted", () => {
    const check = checkReport(
      changed(({ findings }) => delete findings.at(-1)?.["conditions"]),
      sheet,
    );
    expect(check.ok).toBe(true);
    expect(check.advisories.map(({ at }) => at)).toEqual([
      "/findings/11/conditions/warm",
      "/findings/11/conditions/throttle-open",
    ]);
  });

  it("without findings", () => {
    expect(
      checkReport(
        changed((report) => (report.findings = [])),
        sheet,
      ).ok,
    ).toBe(true);
  });
});

describe("a file with ten different mistakes", () => {
  it("lists exactly those ten, with item, position and what would work", () => {
    expect(problemsOf(read("ten-mistakes"))).toEqual([
      {
        at: "/findings/0/item",
        item: "wheels.thread-depth",
        position: "left-front",
        reason: 'Sheet evenhand version 1 has no item "wheels.thread-depth": perhaps wheels.tread-depth.',
      },
      {
        at: "/findings/1/position",
        item: "doors.latches",
        position: "left-rear-door",
        reason:
          '"left-rear-door" does not apply to this car: “Latches” is asked at left-front-door or right-front-door.',
      },
      {
        at: "/findings/2/answer/kind",
        item: "electrics.horn",
        position: "",
        reason: '“Horn” is answered by "working", not by "presence": answer so, or "not-seen" with a reason.',
      },
      {
        at: "/findings/3/answer/unit",
        item: "engine.compression",
        position: "cylinder-2",
        reason: "The unit is missing: write psi, kPa, bar or kgf/cm2.",
      },
      {
        at: "/findings/4/answer/unit",
        item: "wheels.pressure",
        position: "left-front",
        reason: "lbf.ft is a unit of torque, and “Tire pressure” is a pressure: write it in psi, kPa or bar.",
      },
      {
        at: "/findings/5/answer/values/0/value",
        item: "wheels.tread-depth",
        position: "right-front",
        reason: "-3⁄32 in cannot be: “Tread depth” lies between 0⁄32 in and 40⁄32 in.",
      },
      {
        at: "/findings/6/answer/option",
        item: "identity.originality",
        position: "engine",
        reason:
          '“How original” has no option "matching-numbers": name original-to-car, right-type-and-date, right-type, other-type or not-known.',
      },
      {
        at: "/findings/8",
        item: "trunk.spare",
        position: "",
        reason: "“Spare wheel” is answered already by finding 7: keep one of the two.",
      },
      {
        at: "/findings/9/instrument",
        item: "steering.free-play",
        position: "",
        reason:
          'The report has no instrument "grandfathers-ruler": name tread-gauge or compression-gauge, or add it to the report\'s instruments.',
      },
      {
        at: "/findings/10/answer/denied/0",
        item: "body.faults",
        position: "hood",
        reason: "“dent” is both found and denied: take one of the two away.",
      },
    ]);
  });
});

describe("checkReport refuses", () => {
  it.each([
    [null, ""],
    [5, ""],
    ["text", ""],
    [[], ""],
    [{}, "/format"],
    [{ format: "report" }, "/format"],
  ])("%j, which is no report", (json, at) => {
    expect(problemsOf(json)).toEqual([
      {
        at,
        reason:
          'This is not an Evenhand report: a report is a JSON object whose format is "evenhand-report".',
      },
    ]);
  });

  it.each([
    [
      { id: "evenhand", version: 2 },
      "/sheet/version",
      "Sheet evenhand version 2 is not known here, so its findings were not read: use evenhand version 1.",
    ],
    [
      { id: "other", version: 1 },
      "/sheet/id",
      "Sheet other version 1 is not known here, so its findings were not read: use evenhand version 1.",
    ],
  ])("another sheet (%j) without judging findings by this one", (name, at, reason) => {
    const json = { ...read("ten-mistakes"), sheet: name };
    expect(problemsOf(json)).toEqual([{ at, reason }]);
  });

  it("another sheet beside what is wrong in the report's own fields", () => {
    const json = changed((report) => {
      report["sheet"] = { id: "evenhand", version: 9 };
      report["kind"] = "rumor";
    });
    expect(problemsOf(json).map(({ at }) => at)).toEqual(["/sheet/version", "/kind"]);
  });

  it("a broken header together with findings, and nothing twice", () => {
    const json = changed((report) => {
      report["kind"] = "rumor";
      report["visit"] = { started: "yesterday", zone: "America/Chicago" };
      report["instruments"] = [{ id: "tread-gauge" }, { id: "compression-gauge", name: "gauge" }];
      report.findings.push({ item: "electrics.clock", answer: { kind: "working", value: "maybe" } });
      report.findings.push({
        item: "wheels.pressure",
        position: "nowhere",
        answer: { kind: "not-seen", reason: "no-tool" },
      });
    });
    expect(problemsOf(json).map(({ at }) => at)).toEqual([
      "/kind",
      "/visit/started",
      "/instruments/0/name",
      "/findings/12/answer/value",
      "/findings/13/position",
    ]);
  });

  it("what a car of unknown form cannot have, and no more", () => {
    const json = changed((report) => {
      report["vehicle"] = { make: "Uthwick" };
      report.findings.push({
        item: "doors.latches",
        position: "left-rear-door",
        answer: { kind: "working", value: "yes" },
      });
      report.findings.push({
        item: "doors.latches",
        position: "hatch",
        answer: { kind: "working", value: "yes" },
      });
    });
    const found = linesOf(json).filter((line) => line.startsWith("/findings"));
    expect(found).toEqual([
      '/findings/13/position: “Latches” has no position "hatch": name one of its doors.',
    ]);
  });

  it("findings that are no list", () => {
    const json = changed((report) => Object.assign(report, { findings: "none" }));
    expect(linesOf(json)).toEqual(["/findings: findings cannot be read: give a list."]);
  });

  it("a finding that is no object, and the others with it", () => {
    const json = changed(({ findings }) => Object.assign(findings, { 0: 7, 5: { item: "electrics.horn" } }));
    expect(linesOf(json)).toEqual([
      "/findings/0: it cannot be read: give an object.",
      "/findings/5/answer: answer is missing: give an object.",
    ]);
  });

  it("a visit that ends before it starts", () => {
    const json = changed((report) =>
      Object.assign(report, {
        visit: { started: "2026-05-04T15:00:00Z", ended: "2026-05-04T14:59:59Z", zone: "UTC" },
      }),
    );
    expect(linesOf(json)).toEqual([
      "/visit/ended: The visit ends (2026-05-04T14:59:59Z) before it starts (2026-05-04T15:00:00Z): correct one of the two.",
    ]);
    expect(
      checkReport(
        changed((report) =>
          Object.assign(report, {
            visit: { started: "2026-05-04T15:00:00Z", ended: "2026-05-04T15:00:00Z", zone: "UTC" },
          }),
        ),
        sheet,
      ).ok,
    ).toBe(true);
  });

  it.each<["instruments" | "persons" | "scales", Entry, string, string]>([
    [
      "instruments",
      { id: "tread-gauge", name: "again" },
      "/instruments/2/id",
      'The instrument "tread-gauge" stands twice: give each its own id.',
    ],
    [
      "persons",
      { id: "rowan", name: "again" },
      "/persons/1/id",
      'The person "rowan" stands twice: give each its own id.',
    ],
    [
      "scales",
      {
        id: "three-steps",
        name: "again",
        grades: [
          { id: "a", name: "a" },
          { id: "b", name: "b" },
        ],
      },
      "/scales/2/id",
      'The scale "three-steps" stands twice: give each its own id.',
    ],
  ])("a second of the same among its %s", (field, entry, at, reason) => {
    const json = changed((report) => report[field].push(entry));
    expect(problemsOf(json)).toEqual([{ at, reason }]);
  });

  it("ids that are no text, each once, and never as the same", () => {
    const json = changed(({ persons }) => persons.push({ id: 7, name: "one" }, { id: 7, name: "two" }));
    expect(problemsOf(json).map(({ at }) => at)).toEqual(["/persons/1/id", "/persons/2/id"]);
  });

  it("an instrument whose resolution and accuracy measure different things", () => {
    const json = changed((report) =>
      report.instruments.push({
        id: "odd",
        name: "odd",
        resolution: { value: 1, unit: "psi" },
        accuracy: { absolute: { value: 1, unit: "mm" } },
      }),
    );
    expect(linesOf(json)).toEqual([
      "/instruments/2/accuracy/absolute/unit: The resolution of odd is in psi, a unit of pressure, its accuracy in mm, one of length: write both in units of what it measures.",
    ]);
  });

  it("an instrument used for what it cannot measure, once", () => {
    const json = changed(({ findings }) => {
      for (const position of ["left-rear", "right-rear"]) {
        findings.push({
          item: "wheels.tread-depth",
          position,
          answer: { kind: "reading", unit: "mm", values: [{ value: 5 }] },
          instrument: "compression-gauge",
        });
      }
    });
    expect(problemsOf(json).map(({ at }) => at)).toEqual(["/findings/12/instrument"]);
  });

  it("a second finding for a place even where its answer cannot be read", () => {
    const json = changed(({ findings }) => {
      findings.push({ item: "wheels.tread-depth", position: "left-front" });
    });
    expect(linesOf(json)).toEqual([
      "/findings/12: “Tread depth” at left-front is answered already by finding 0: keep one of the two.",
      "/findings/12/answer: answer is missing: give an object.",
    ]);
  });
});

const grades = (...stretches: (readonly [number, number] | undefined)[]) =>
  stretches.map((stretch, index) => ({
    id: `g${index}`,
    name: `g${index}`,
    ...(stretch === undefined ? {} : { stretch }),
  }));
const withScale = (scale: object) => changed((report) => report.scales.push({ name: "own", ...scale }));

describe("checkReport refuses a scale", () => {
  it("that brings stretches of its own, and says what would work", () => {
    const problems = problemsOf(withScale({ id: "own", grades: grades(undefined, [0.1, 0.9]) }));
    expect(problems.map(({ at }) => at)).toEqual(["/scales/2/grades/1/stretch"]);
    expect(problems[0]?.reason).toMatch(/mapped by the service.*leave the stretch out/);
  });

  it("that names a grade twice", () => {
    const list = [
      { id: "a", name: "a" },
      { id: "b", name: "b" },
      { id: "a", name: "c" },
    ];
    expect(linesOf(withScale({ id: "own", grades: list }))).toEqual([
      "/scales/2/grades/2/id: The grade a stands twice: name each grade once.",
    ]);
  });

  it("that calls itself the house's, or a percentage without a step", () => {
    expect(linesOf(withScale({ id: "house", grades: grades(undefined, undefined) }))).toEqual([
      "/scales/2/id: The scale house is the sheet's own: give this one another id.",
    ]);
    const stepless = changed((report) => {
      for (const scale of report.scales) delete scale["step"];
    });
    expect(linesOf(stepless)).toEqual([
      "/scales/1/step: The scale percent needs the step it is given in: for example 5.",
      '/findings/4/answer/scale: A percentage needs its step: add a scale "percent" with its step to the report\'s scales.',
    ]);
  });
});

describe("checkReport never throws", () => {
  it("whatever stands where a finding or the whole report should", () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (one, other) => {
        const json = changed((report) =>
          Object.assign(report, { findings: [one, other], vehicle: one, scales: other }),
        );
        const check = checkReport(json, sheet);
        expect(check.ok).toBe(false);
        expect(problemsOf(one).length).toBeGreaterThan(0);
        expect(
          check.ok
            ? []
            : check.problems.filter(({ reason }) => !/^\S.*[.:].*\.$/s.test(reason) && !reason.endsWith(".")),
        ).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  }, 60_000);

  it("and points at what is there, by RFC 6901", () => {
    const check = checkReport(
      changed((report) => (report["a/b~c"] = 1)),
      sheet,
    );
    expect(check.ok ? [] : check.problems.map(({ at }) => at)).toEqual(["/a~1b~0c"]);
  });
});
