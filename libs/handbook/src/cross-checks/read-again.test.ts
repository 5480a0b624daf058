import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { CrossCheck, MakerData } from "@evenhand/shared/cross-check";
import type { FindingInput } from "@evenhand/shared/finding";
import { describe, expect, it } from "vitest";
import { choice, code, reading, report } from "../../testing/small-report.ts";
import { sentence } from "../sentence/index.ts";
import { crossChecks } from "./index.ts";

const sheet = compileSheet(sheetVersion1);
const { vehicle } = report([]);

type Told = { readonly stated?: readonly FindingInput[]; readonly found?: readonly FindingInput[] };
type Car = { readonly maker?: MakerData; readonly modelYear?: number };

const checksOf = ({ stated = [], found = [] }: Told, { maker = {}, modelYear = 1958 }: Car = {}) => {
  const car = { vehicle: { ...vehicle, modelYear } };
  const [a, b] = [report(stated, car), report(found, { ...car, kind: "inspection" })];
  return crossChecks(a, b, sheet, {
    maker,
  });
};
const find = (rule: string, told: Told, car?: Car) =>
  checksOf(told, car).filter((check) => check.rule === rule);

/** An invented number with a wrong check digit. */
const wrong = code("identity.vin", "0EVTL82643A007146", "main-plate");

const said = (check: CrossCheck | undefined): string => (check === undefined ? "" : sentence(check));
const turns = (value: number) =>
  reading("driveline.axle-turns", "1", [value, value], "", { "both-wheels": false });
const cylinders = (psi: number, warm: boolean) =>
  [1, 2, 3, 4].map((cylinder) =>
    reading("engine.compression", "psi", [psi, psi], `cylinder-${cylinder}`, {
      warm,
      "throttle-open": true,
    }),
  );
const tire = (size: string, construction: string) => (corner: string) => [
  code("wheels.tire-size", size, corner),
  choice("wheels.tire-construction", construction, corner),
];
const worn = (item: string) => ({
  item,
  answer: { kind: "grade" as const, scale: "house", value: "heavy-wear" },
});
const sizes = (bore: number) => [
  reading("engine.bore", "in", [bore, bore, bore]),
  reading("engine.stroke", "in", [3.125, 3.125, 3.125]),
];

describe("a code accuses only where both people read it, or one read it twice", () => {
  it.each<[string, FindingInput, string, Car]>([
    ["vin-form", wrong, "check-digit", { modelYear: 2003 }],
    ["vin-year", code("identity.vin", "0EVTL82633A007146", "main-plate"), "other-year", { modelYear: 2007 }],
    [
      "chassis-pattern",
      code("identity.vin", "TM467A20871", "main-plate"),
      "does-not-match",
      { maker: { chassisPattern: "T[MN]###[RW]#####" } },
    ],
    [
      "partial-vin",
      code("identity.partial-vin", "R6731196", "engine"),
      "differs",
      { maker: { stampFrom: { engine: "{6}{4-5}{7-11}" } } },
    ],
  ])("%s", (rule, read, reason, car) => {
    const [once, ...more] = find(rule, { found: [read] }, car);
    expect(more).toEqual([]);
    expect(once).toMatchObject({
      verdict: "cannot-tell",
      reason: "read-again",
      severity: "halt",
      bad: [],
      decides: [],
    });
    expect(said(once)).toMatch(/read once.*Read it again, with a photograph/);
    const both = find(rule, { stated: [read], found: [read] }, car);
    expect(both.map((check) => check.reason)).toEqual([reason]);
    expect(both[0]).toMatchObject({ verdict: "breaks", severity: "halt" });
  });

  it("counts the title beside the plate as a second reading", () => {
    const title = code("identity.title-number", "0EVTL82643A007146");
    const reasons = find("vin-form", { found: [wrong, title] }, { modelYear: 2003 }).map(
      ({ reason }) => reason,
    );
    expect(new Set(reasons)).toEqual(new Set(["check-digit"]));
  });
});

describe("dates without a year are read in the model year, September to August", () => {
  const maker: MakerData = {
    dateForms: {
      block: { form: "M d", from: 1955, to: 1979 },
      build: { form: "wyy", from: 1955, to: 1975 },
    },
  };
  const car = { maker, modelYear: 1967 };
  const build = code("identity.build-date", "0667");
  const stated = [choice("identity.originality", "original-to-car", "engine"), build];
  const readByBoth = (part: FindingInput): Told => ({ stated: [...stated, part], found: [build, part] });
  const dated = (text: string) =>
    find("date-correct", readByBoth(code("identity.date-code", text, "block")), car)[0];

  it.each([
    ["A 15", "usual", "1967-01-15"],
    ["K 20", "plausible", "1966-11-20"],
    ["E 15", "after-build", "1967-05-15"],
  ])("%s on a car built in February 1967: %s", (text, reason, part) => {
    const check = dated(text);
    expect(check).toMatchObject({ reason, words: { part: expect.stringContaining(part) } });
    expect(said(check)).toContain("the code has no year; taken as of the model year");
  });

  it("leaves the summer before the model year beside the one in it", () => {
    expect(dated("G 15")).toMatchObject({ verdict: "cannot-tell", reason: "some-readings" });
  });

  it("orders the casting before the build by them", () => {
    const [check] = find("date-order", readByBoth(code("identity.date-code", "E 15", "block")), car);
    expect(check).toMatchObject({ verdict: "breaks", reason: "out-of-order" });
  });
});

describe("the turns of one wheel", () => {
  const claim = reading("driveline.axle-ratio", "1", [3.55]);
  const tag = reading("driveline.axle-ratio-tag", "1", [3.55]);

  it("are doubled by the rule and by nobody else", () => {
    const maker = { axleRatios: [3.08, 3.55, 4.11] };
    const [check] = find("turns-ratio", { stated: [claim], found: [turns(1.77)] }, { maker });
    expect(check).toMatchObject({ verdict: "holds", figures: { ratio: { value: 3.54 } } });
  });

  it("that were doubled before they were written down never become 7.10, by themselves or beside the tag", () => {
    const checks = checksOf({ stated: [claim], found: [turns(3.55), tag] });
    const ratios = checks.filter(({ rule }) => rule.includes("ratio"));
    expect(ratios.filter(({ verdict }) => verdict === "breaks")).toEqual([]);
    expect(ratios.filter(({ rule }) => rule === "ratio-combined")).toEqual([]);
    const [check] = ratios.filter(({ rule }) => rule === "turns-ratio");
    expect(check).toMatchObject({ reason: "perhaps-doubled", alternatives: ["3.55"] });
  });
});

describe("compression by its level", () => {
  it("is low at 60 psi all round, though nobody called the engine rebuilt", () => {
    const [check] = find("compression", { found: cylinders(60, true) });
    expect(check).toMatchObject({ verdict: "breaks", reason: "low-level", severity: "worth" });
    expect(check?.bad).toHaveLength(4);
    expect(said(check)).toContain("85 psi (common practice)");
  });

  it("is not judged on a cold engine, called rebuilt or not", () => {
    const found = cylinders(60, false);
    expect(find("compression", { found })[0]).toMatchObject({ reason: "even" });
    const stated = [choice("engine.rebuild-claim", "rebuilt")];
    expect(find("rebuilt-engine", { stated, found })[0]?.verdict).not.toBe("breaks");
  });
});

describe("what everyday cars have", () => {
  it("radial tires in front of bias tires are a danger", () => {
    const front = ["left-front", "right-front"].flatMap(tire("P205/75R15", "radial"));
    const rear = ["left-rear", "right-rear"].flatMap(tire("G78-15", "bias"));
    const [check] = find("tires-mixed", { found: [...front, ...rear] });
    expect(check).toMatchObject({ verdict: "breaks", reason: "radial-front-bias-rear", severity: "danger" });
  });

  it("pedals keep their wear where the seats were retrimmed; belts do not", () => {
    const stated = [reading("identity.odometer", "mi", [12_000])];
    const trim = choice("interior.trim-history", "retrimmed");
    const pedals = find("wear-miles", { stated, found: [worn("interior.pedals"), trim] });
    expect(pedals[0]).toMatchObject({ reason: "more-wear-than-miles", words: { parts: "pedal" } });
  });

  it("a nominal size is no lie where the engine is bored over", () => {
    const stated = [reading("engine.displacement", "in3", [138.06])];
    expect(find("displacement", { stated, found: sizes(3.78) })[0]).toMatchObject({
      verdict: "holds",
      reason: "overbored",
    });
    expect(find("displacement", { stated, found: sizes(3.99) })[0]).toMatchObject({
      reason: "not-as-claimed",
    });
  });
});

const late = (part: string) => code("identity.date-code", "1963-05", part);
const accusing = (told: Told) => find("date-correct", told).filter(({ claim }) => claim?.side === "a");
const dates = (told: Told) => accusing(told).map(({ verdict, reason }) => `${verdict} ${reason}`);
const madeIn = (week: string) => code("wheels.tire-identification", `0VNE HKTA ${week}`, "left-rear");

const mixed = (other: string) =>
  find("tires-mixed", {
    stated: [code("wheels.tire-size", other, "left-rear")],
    found: [
      code("wheels.tire-size", "P205/75R15 97S", "left-rear"),
      choice("wheels.tire-construction", "bias-belted", "right-rear"),
    ],
  }).map(({ reason }) => reason);

describe("a break of any rule that rests on a code", () => {
  const stated = [
    choice("identity.originality", "original-to-car", "engine"),
    code("identity.build-date", "1958-03"),
  ];
  const build = code("identity.build-date", "1958-03");

  it("accuses nobody where one person read it once", () => {
    const [check] = accusing({ stated, found: [late("block"), build] });
    expect(check).toMatchObject({
      verdict: "cannot-tell",
      reason: "read-again",
      severity: "worth",
      bad: [],
      decides: [],
    });
    expect(said(check)).toMatch(/It rests on 1963-05, which was not read alike twice: read it again/);
  });

  it("stands where both read it, or where two parts speak against one claim", () => {
    const broken = "breaks after-build";
    expect(dates({ stated: [...stated, late("block")], found: [late("block"), build] })).toContain(broken);
    const two = dates({ stated, found: [late("block"), late("left-head"), build] });
    expect(new Set(two)).toEqual(new Set([broken]));
  });

  it("keeps an old tire's danger where nobody read its number otherwise, and asks where somebody did", () => {
    expect(find("tire-age", { found: [madeIn("1208")] })[0]).toMatchObject({
      verdict: "breaks",
      severity: "danger",
    });
    const [date] = find("tire-age", {
      stated: [code("wheels.tire-identification", "1208", "left-rear")],
      found: [madeIn("1208")],
    });
    expect(date).toMatchObject({ verdict: "breaks", severity: "danger" });
    const differing = find("tire-age", { stated: [madeIn("1228")], found: [madeIn("1208")] });
    expect(differing.filter(({ verdict }) => verdict === "breaks")).toEqual([]);
    expect(differing.map(({ reason }) => reason)).toContain("read-again");
  });

  const built = (text: string) =>
    dates({
      stated: [...stated, { ...late("block"), answer: { kind: "code", text } }],
      found: [late("block"), build],
    });

  it("takes a tire's size, a date and a casting number for read alike however the other person writes them", () => {
    expect(mixed("205/75 R 15")).toContain("constructions-differ");
    expect(mixed("P205/75R15 93H")).toContain("constructions-differ");
    expect(mixed("195/75R15")).not.toContain("constructions-differ");
    expect(built("May 1963")).toContain("breaks after-build");
    expect(built("June 1963")).not.toContain("breaks after-build");
  });
});
