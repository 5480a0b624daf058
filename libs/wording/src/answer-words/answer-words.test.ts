import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { sheetWords } from "../sheet-words/index.ts";
import { answerWords, faultAt } from "./index.ts";
import type { AnswerForm } from "./index.ts";

const sheet = sheetWords(sheetVersion1);
const itemOf = (id: string) => {
  const item = sheet.findItem(id);
  if (item === undefined) throw new Error(`no ${id}`);
  return item;
};
const say = (answer: Answer, item = "electrics.horn", scales: GradeScale[] = [], form: AnswerForm = "said") =>
  answerWords(answer, { sheet, item: itemOf(item), scales }, form).replaceAll("\u00A0", " ");
const row = (answer: Answer, item = "electrics.horn") => say(answer, item, [], "row");
const scaleOf = (id: string): GradeScale => ({
  id,
  name: id,
  grades: [
    { id: "spent", name: `${id} low` },
    { id: "fine-one", name: `${id} high` },
  ],
});

const readings = (...values: number[]): Answer => ({
  kind: "reading",
  unit: "mi",
  values: values.map((value) => ({ value })),
});

describe("an answer after stated or found", () => {
  it("lists what was found and denied", () => {
    const rust = { kind: "corrosion", spot: "upper-front", extent: { value: 40, unit: "mm" as const } };
    const faults = (found: (typeof rust)[], denied: "all" | string[]) =>
      say({ kind: "faults", found, denied }, "body.faults");
    expect(faults([rust], ["dent", "sink-mark"])).toBe(
      "corrosion at upper front, 40 mm, no dent and no sink mark",
    );
    expect(faults([rust], "all")).toBe("corrosion at upper front, 40 mm");
    expect(faults([], "all")).toBe("no faults");
    expect(faults([], ["dent"])).toBe("no dent");
    expect(faults([], [])).toBe("nothing listed");
  });

  it.each([
    ["house", "even-wear", "even wear"],
    ["house", "spent", "spent"],
    ["points", "spent", "points low (here: spent or heavy wear)"],
    ["stars", "fine-one", "stars high (here: light wear or as new)"],
    ["lost", "fine-one", "fine one"],
  ])("says a grade of %s by its name, with what it is read as: %s", (scale, value, words) => {
    const scales = [scaleOf("stars"), scaleOf("points"), scaleOf("house")];
    expect(say({ kind: "grade", scale, value }, "interior.headliner", scales)).toBe(words);
  });

  it("says the rest", () => {
    expect(say({ kind: "grade", scale: "percent", value: 72.5 }, "interior.headliner")).toBe("72.5%");
    expect(say({ kind: "choice", option: "right-type" }, "identity.originality")).toBe("right type");
    expect(say({ kind: "choice", option: "else-where" })).toBe("else where");
    expect(say({ kind: "presence", value: "not-known" })).toBe("not known");
    expect(say({ kind: "reading", unit: "psi", values: [{ value: 150 }, { value: 148.5 }] })).toBe(
      "150 and 148.5 psi",
    );
    expect(say({ kind: "code", text: "M2" })).toBe("M2");
  });
});

describe("an answer alone in a row", () => {
  it("says the same as the sentence, as a row says it", () => {
    const works = { kind: "working", value: "intermittent" } as const;
    expect([row(works), say(works)]).toEqual(["works now and then", "working now and then"]);
    const unseen = { kind: "not-seen", reason: "no-tool" } as const;
    expect([row(unseen), say(unseen)]).toEqual(["not seen: no tool for it", "not seen (no tool for it)"]);
    expect(row({ kind: "not-fitted" })).toBe("not fitted");
    const off = { kind: "presence", value: "absent" } as const;
    expect([row(off), row(off, "visit.battery-on-charger")]).toEqual(["absent", "off a charger"]);
  });

  it("tells a few readings one by one and many by their range, thousands grouped", () => {
    expect(row(readings(4120))).toBe("4,120 mi");
    expect(row(readings(1_234_567, 7))).toBe("1,234,567 · 7 mi");
    expect(row(readings(5, 6, 7, 8, 4))).toBe("5 readings, 4–8 mi");
  });

  it("tells four readings one by one, and each of them in a sentence", () => {
    expect(row(readings(4, 5, 6, 7))).toBe("4 · 5 · 6 · 7 mi");
    expect(say(readings(4, 5, 6, 7, 8))).toBe("4, 5, 6, 7 and 8 mi");
    expect(say(readings(4))).toBe("4 mi");
  });

  it("tells every color in a sentence", () => {
    const colors = [
      { L: 40, a: -3, b: 12 },
      { L: 41, a: 0, b: 12.5 },
    ];
    expect(say({ kind: "color", geometry: "d/8", metallic: false, values: colors })).toBe(
      "L* 40.0, a* −3.0, b* 12.0 and L* 41.0, a* 0.0, b* 12.5",
    );
    expect(row({ kind: "color", geometry: "d/8", metallic: false, values: colors.slice(0, 1) })).toBe(
      "L* 40.0, a* −3.0, b* 12.0 (1 reading)",
    );
  });

  it("tells every option that was chosen", () => {
    const coolant = { kind: "choice", option: "low", also: ["oily", "rusty"] } as const;
    expect(row({ ...coolant, also: [...coolant.also] }, "engine.coolant")).toBe("low, oily, rusty");
  });

  it("tells a color by its first reading and how many there are", () => {
    const one = { L: 40.04, a: -3, b: 12 };
    expect(row({ kind: "color", geometry: "d/8", metallic: false, values: [one, one] })).toBe(
      "L* 40.0, a* −3.0, b* 12.0 (2 readings)",
    );
  });

  it("never says that there are no faults beside one that was found", () => {
    const rust = { kind: "corrosion", spot: "upper-front" };
    expect(row({ kind: "faults", found: [rust], denied: "all" }, "body.faults")).toBe(
      "corrosion at upper front; nothing else",
    );
    expect(row({ kind: "faults", found: [], denied: "all" }, "body.faults")).toBe("no faults");
    expect(row({ kind: "faults", found: [rust], denied: ["dent"] }, "body.faults")).toBe(
      "corrosion at upper front; no dent",
    );
  });
});

describe("the names of the sheet", () => {
  it("stand for kinds and spots; what it does not know is read out of its id", () => {
    const at = (kind: string, spot: string | undefined, item: string) =>
      faultAt(kind, spot, { sheet, item: itemOf(item) });
    expect(sheet.faultKind("sink-mark")).toBe("sink mark");
    expect(sheet.faultKind("cannon-hole")).toBe("cannon hole");
    expect(at("dent", "lower-rear", "body.faults")).toBe("dent at lower rear");
    expect(at("cut", "inner-sidewall", "wheels.tire-faults")).toBe("cut at inner sidewall");
    expect(at("dent", "over-there", "body.faults")).toBe("dent at over there");
    expect(at("dent", undefined, "body.faults")).toBe("dent");
  });
});
