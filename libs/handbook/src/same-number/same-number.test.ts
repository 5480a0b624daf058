import { describe, expect, it } from "vitest";
import { chassisPattern } from "../chassis-pattern/index.ts";
import { firstColor } from "../first-color/index.ts";
import { partialVin } from "../partial-vin/index.ts";
import { vinForm } from "../vin-form/index.ts";
import { vinReading } from "../vin-reading/index.ts";
import { vinYear } from "../vin-year/index.ts";
import { sameNumber } from "./index.ts";

const at = (place: string, number: string) => ({ place, number });

describe("sameNumber", () => {
  it("sets every pair against each other and names those that differ", () => {
    const result = sameNumber([at("title", "20875"), at("plate", "2087S"), at("frame", "2000")]);
    expect(result).toMatchObject({ reason: "read-again", figures: { places: { value: 3 } } });
    expect(result.alternatives).toEqual(["title 20875, frame 2000", "plate 2087S, frame 2000"]);
  });

  it("says that numbers differ only where each of them was read twice", () => {
    const plate = [at("plate", "20875"), at("title", "20875")];
    expect(sameNumber([...plate, at("frame", "2000")])).toMatchObject({
      verdict: "cannot-tell",
      reason: "read-again",
      severity: "halt",
    });
    expect(sameNumber([...plate, at("frame", "2000"), at("frame (inspection)", "2000")])).toMatchObject({
      verdict: "breaks",
      reason: "differ",
      severity: "halt",
    });
  });

  it("calls one slip probably misread, and names the pairs", () => {
    const result = sameNumber([at("title", "20875"), at("plate", "20875"), at("frame", "2087S")]);
    expect(result).toMatchObject({ reason: "probably-misread" });
    expect(result.alternatives).toEqual(["title 20875, frame 2087S", "plate 20875, frame 2087S"]);
    expect(sameNumber([at("title", "IM8GDM9AXKP042788"), at("plate", "1M8GDM9AXKPO42788")]).words).toEqual({
      number: "1M8GDM9AXKP042788",
    });
  });
});

const place = (number: string) => chassisPattern({ number, pattern: "1##" }).figures.place?.value;

describe("chassisPattern", () => {
  it.each([
    ["12", "##", true],
    ["1A", "##", false],
    ["A1", "@#", true],
    ["11", "@#", false],
    ["A1", "??", true],
    ["A+", "??", false],
    ["Q", "[QZ]", true],
    ["Z", "[QZ]", true],
    ["X", "[QZ]", false],
    ["", "[QZ]", false],
    ["13", "13", true],
    ["14", "13", false],
    ["1 3-4", "1 3 #", true],
    ["134", "13", false],
    ["1", "13", false],
    ["q", "[qz]", true],
  ])("%s as %s: %s", (number, pattern, fits) => {
    expect(chassisPattern({ number, pattern }).verdict).toBe(fits ? "holds" : "breaks");
  });

  it("names the first place that does not fit", () => {
    expect([place("2AA"), place("1AA"), place("11"), place("1111"), place("111")]).toEqual([
      1,
      2,
      3,
      4,
      undefined,
    ]);
  });
});

const of = (stamp: string, derivation: string, chassisNumber = "TM467R20871") =>
  partialVin({ stamp, derivation, chassisNumber });

describe("partialVin", () => {
  it.each([
    ["R6720871", "{6}{4-5}{7-11}", "equal"],
    ["R 67 20871", "{6} {4-5} {7-11}", "equal"],
    ["XR", "x{6}", "equal"],
    ["1", "{11}", "equal"],
    ["1", "{11-11}", "equal"],
    ["R6720817", "{6}{4-5}{7-11}", "probably-misread"],
    ["R6720872", "{6}{4-5}{7-11}", "differs"],
    ["1", "{12}", "number-too-short"],
    ["871", "{9-12}", "number-too-short"],
    ["1R", "{12}{6}", "number-too-short"],
  ])("%s by %s: %s", (stamp, derivation, reason) => {
    expect(of(stamp, derivation).reason).toBe(reason);
  });

  it("was never stamped, whatever was read", () => {
    expect(
      partialVin({ stamp: "R67", neverStamped: true, chassisNumber: "TM467R20871", derivation: "{6}" })
        .reason,
    ).toBe("never-stamped");
    expect(
      partialVin({ stamp: "R", neverStamped: false, chassisNumber: "TM467R20871", derivation: "{6}" }).reason,
    ).toBe("equal");
  });
});

describe("firstColor", () => {
  it("names each spot that differs", () => {
    const spots = [
      { place: "jamb", color: "y" },
      { place: "firewall", color: "R" },
    ];
    expect(firstColor({ tag: "Y", spots })).toMatchObject({
      reason: "differs",
      alternatives: ["firewall: R"],
    });
    expect(firstColor({ spots }).reason).toBe("too-few");
  });
});

const year = (claimedYear: number, text = vin) =>
  vinYear({ vin: text, market: "north-america", kind: "car", claimedYear }).reason;

const vin = "0EVTL82633A007146";

const reason = (modelYear: number | undefined, market: "north-america" | "other" | "unknown") =>
  vinForm({ vin, market, modelYear }).reason;

describe("rules on a VIN", () => {
  it("speak from 1981 on, and only for North America", () => {
    expect([
      reason(1980, "north-america"),
      reason(1981, "north-america"),
      reason(undefined, "north-america"),
    ]).toEqual(["before-1981", "passes", "passes"]);
    expect([reason(1980, "other"), reason(1981, "other"), reason(undefined, "unknown")]).toEqual([
      "before-1981",
      "other-market",
      "market-unknown",
    ]);
  });

  it("read the year off 17 characters even where the claim is older", () => {
    expect([year(1967), year(2003), year(1967, "TM467R20871"), year(1981, "TM467R20871")]).toEqual([
      "other-year",
      "same-year",
      "before-1981",
      "not-seventeen",
    ]);
  });

  it("say which reading is right only where one alone passes", () => {
    const first = vinReading({ first: "0EVTL8Z633A007146", second: vin, market: "north-america" });
    expect(first.words).toMatchObject({ right: vin, wrong: "0EVTL8Z633A007146" });
    const second = vinReading({ first: vin, second: "0EVTL8Z633A007146", market: "north-america" });
    expect(second).toMatchObject({
      reason: "second-misread",
      words: { right: vin, wrong: "0EVTL8Z633A007146" },
    });
    expect(
      vinReading({ first: vin, second: "0EVTL8Z633A007146", market: "north-america", modelYear: 1975 })
        .reason,
    ).toBe("outside-the-rule");
    expect(vinReading({ first: vin, second: "0EVTL8Z633A007146", market: "other" }).reason).toBe(
      "outside-the-rule",
    );
  });
});
