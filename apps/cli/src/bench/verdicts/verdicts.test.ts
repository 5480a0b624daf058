import { describe, expect, it } from "vitest";
import { checkReport } from "@evenhand/sheet/check-report";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { curvePicture } from "./curve.ts";
import { plantFalse } from "./false-statements.ts";
import { differsOf, tallyKinds } from "./kinds.ts";
import { lies, liesFound } from "./lies.ts";
import { asDeclared, pairs } from "./people.ts";
import { acrossAlarm, allOf, itemShares, plantDistances, shareOf, tallyReadings } from "./readings.ts";
import { studySecondLook } from "./second-look.ts";
import { honest, isReading, studied } from "./study.ts";
import { keyOf } from "./truth.ts";

const pairCalled = (name: string) => {
  const found = pairs.find((pair) => pair.name.startsWith(name));
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};

describe("a simulated pair of reports", () => {
  it("is the same for the same number, another for another, and one the sheet accepts", () => {
    const once = studied(asDeclared, 3, honest);
    expect(JSON.stringify(studied(asDeclared, 3, honest))).toBe(JSON.stringify(once));
    expect(JSON.stringify(studied(asDeclared, 4, honest).b)).not.toBe(JSON.stringify(once.b));
    for (const report of [once.a, once.b]) {
      expect(checkReport(report, sheetVersion1)).toMatchObject({ ok: true });
    }
  });

  it("is of one car, whoever looks at it, and answers in every way there is", () => {
    const [careful, hurried] = [asDeclared, pairCalled("two ordinary")].map(
      (pair) => studied(pair, 5, honest).story.car,
    );
    expect(JSON.stringify(careful)).toBe(JSON.stringify(hurried));
    const { a, b } = studied(asDeclared, 5, honest);
    const kinds = new Set([...a.findings, ...b.findings].map(({ answer }) => answer.kind));
    expect([...kinds].sort()).toEqual([
      "choice",
      "code",
      "color",
      "faults",
      "grade",
      "not-fitted",
      "not-seen",
      "presence",
      "reading",
      "working",
    ]);
  });

  it("lies days apart, with miles and wear between", () => {
    const { a, b, stated, found } = studied(asDeclared, 6, honest, isReading);
    expect(Date.parse(b.visit.started) - Date.parse(a.visit.started)).toBeGreaterThan(2 * 86_400_000);
    const treadOf = ({ known }: typeof stated) =>
      known.find(({ key }) => key === "wheels.tread-depth@left-front")?.truth;
    expect(treadOf(found)).not.toEqual(treadOf(stated));
  });

  it("states what is claimed, where something is", () => {
    const { story, a } = studied(asDeclared, 7, plantFalse(0.2));
    const concealed = Array.from(story.claims).filter(([, { kind }]) => kind === "faults");
    const answers = new Map(a.findings.map(({ item, position, answer }) => [keyOf(item, position), answer]));
    expect(concealed.length).toBeGreaterThan(5);
    for (const [key] of concealed) expect(answers.get(key)).toMatchObject({ kind: "faults" });
  });
});

// Wide bounds, so that the study as it is printed can move and a broken engine can not.
describe("what the study finds, in short", () => {
  const declared = tallyReadings(asDeclared, 24, plantDistances(0.34, [1, 2, 12]));

  it("calls the same what is, and next to nothing that lies what matters apart", () => {
    expect(shareOf(allOf(declared, "this engine", 0), "agree", "agree-marked")).toBeGreaterThan(0.8);
    expect(shareOf(allOf(declared, "this engine", 0), "differ")).toBeLessThan(0.02);
    expect(shareOf(allOf(declared, "this engine", 1), "agree", "agree-marked")).toBeLessThan(0.06);
    expect(shareOf(allOf(declared, "this engine", 2), "differ", "differ-marked")).toBeGreaterThan(0.85);
  });

  it("never calls opposite sides of an alarm the same, and lets every item differ", () => {
    expect(acrossAlarm(declared).of).toBeGreaterThan(50);
    expect(shareOf(acrossAlarm(declared), "agree", "agree-marked", "consistent")).toBe(0);
    const far = itemShares(declared, 12, ["differ", "differ-marked"], 0);
    expect(far.filter(({ of, share }) => of >= 3 && share === 0)).toEqual([]);
  });

  it.each(["noise 1.5", "a wrong spot", "a generous inspector"])(
    "marks most of what agrees a difference apart by %s",
    (name) => {
      const tally = tallyReadings(pairCalled(name), 24, plantDistances(0.25, [1]));
      expect(shareOf(allOf(tally, "this engine", 1), "agree")).toBeLessThan(0.12);
    },
  );

  it("has few lines that differ against a true statement, and far fewer than its rivals", () => {
    const careful = tallyKinds(asDeclared, 8, honest);
    const falseOf = (judge: "this engine" | "fixed bands"): number => {
      const { all, notSo } = differsOf(careful, judge);
      return (all - notSo) / careful.cars;
    };
    expect(falseOf("this engine")).toBeLessThan(6);
    expect(falseOf("fixed bands")).toBeGreaterThan(4 * falseOf("this engine"));
    const lying = differsOf(tallyKinds(asDeclared, 8, plantFalse(0.03)), "this engine");
    expect(lying.notSo / lying.all).toBeGreaterThan(0.75);
    expect(lying.planted / (lying.planted + lying.missed)).toBeGreaterThan(0.8);
  });

  it.each(lies)("finds $name", (lie) => {
    expect(liesFound(lie, asDeclared, 8)).toBeGreaterThanOrEqual(0.625);
  });

  it("draws the same picture of the same counts", () => {
    expect(curvePicture(declared)).toBe(curvePicture(declared));
    expect(curvePicture(declared)).toContain("<polyline");
  });
});

describe("a second look", () => {
  it("mends most of what two people part in though nothing false was stated", () => {
    const { named, falseOnce, falseTwice, doubtfulOnce, doubtfulTwice } = studySecondLook(
      pairCalled("two ordinary"),
      4,
    );
    expect(named).toBeLessThanOrEqual(30);
    expect(falseTwice).toBeLessThan(falseOnce / 2);
    expect(doubtfulTwice).toBeLessThan(doubtfulOnce);
  });
});
