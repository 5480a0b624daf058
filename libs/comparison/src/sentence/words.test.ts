import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import { sheet } from "../../testing/small-reports.ts";
import { asSentence, fill, list } from "./fill.ts";
import { describeAnswer, faultAt, kindWords } from "./words.ts";

const itemOf = (id: string) => {
  const item = sheet.items.get(id)?.item;
  if (item === undefined) throw new Error(`no ${id}`);
  return item;
};
const say = (answer: Answer, item = "electrics.horn", scales: GradeScale[] = []) =>
  describeAnswer({ answer, scales }, itemOf(item), sheet.sheet).replaceAll("\u00A0", " ");
const scaleOf = (id: string): GradeScale => ({
  id,
  name: id,
  grades: [
    { id: "spent", name: `${id} low` },
    { id: "fine-one", name: `${id} high` },
  ],
});

describe("describeAnswer", () => {
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

  it("says house grades in words, and other scales by their own names with what they are read as", () => {
    const scales = [scaleOf("stars"), scaleOf("points"), scaleOf("house")];
    expect(say({ kind: "grade", scale: "house", value: "even-wear" }, "interior.headliner", scales)).toBe(
      "even wear",
    );
    expect(say({ kind: "grade", scale: "house", value: "spent" }, "interior.headliner", scales)).toBe(
      "spent",
    );
    expect(say({ kind: "grade", scale: "points", value: "spent" }, "interior.headliner", scales)).toBe(
      "points low (read as spent or heavy wear)",
    );
    expect(say({ kind: "grade", scale: "stars", value: "fine-one" }, "interior.headliner", scales)).toBe(
      "stars high (read as light wear or as new)",
    );
    expect(say({ kind: "grade", scale: "lost", value: "fine-one" }, "interior.headliner", scales)).toBe(
      "fine one",
    );
    expect(say({ kind: "grade", scale: "percent", value: 72.5 }, "interior.headliner")).toBe("72.5%");
  });

  it("says the rest", () => {
    expect(say({ kind: "choice", option: "right-type" }, "identity.originality")).toBe("right type");
    expect(say({ kind: "choice", option: "elsewhere" }, "identity.originality")).toBe("elsewhere");
    expect(say({ kind: "choice", option: "elsewhere" })).toBe("elsewhere");
    expect(say({ kind: "not-seen", reason: "no-tool" })).toBe("no tool for it");
    expect(say({ kind: "presence", value: "not-known" })).toBe("not known");
    expect(say({ kind: "reading", unit: "psi", values: [{ value: 150 }, { value: 148.5 }] })).toBe(
      "150 and 148.5 psi",
    );
    expect(say({ kind: "code", text: "M2" })).toBe("M2");
  });
});

describe("the names of the sheet", () => {
  it("stand for kinds and spots, which stand for themselves where it has none", () => {
    expect(kindWords("sink-mark", sheet.sheet)).toBe("sink mark");
    expect(kindWords("cannon-hole", sheet.sheet)).toBe("cannon-hole");
    expect(faultAt("dent", "lower-rear", itemOf("body.faults"), sheet.sheet)).toBe("dent at lower rear");
    expect(faultAt("cut", "inner-sidewall", itemOf("wheels.tire-faults"), sheet.sheet)).toBe(
      "cut at inner sidewall",
    );
    expect(faultAt("dent", "elsewhere", itemOf("body.faults"), sheet.sheet)).toBe("dent at elsewhere");
    expect(faultAt("dent", "lower-rear", itemOf("electrics.horn"), sheet.sheet)).toBe("dent at lower-rear");
    expect(faultAt("dent", undefined, itemOf("body.faults"), sheet.sheet)).toBe("dent");
  });
});

describe("fill", () => {
  it("fills what it is given and leaves the rest in sight", () => {
    expect(fill("{a}, {b} and {a}", { a: "one" })).toBe("one, {b} and one");
    expect(asSentence("both say yes")).toBe("Both say yes.");
    expect([list([]), list(["6"]), list(["6", "5"]), list(["6", "6", "5"])]).toEqual([
      "",
      "6",
      "6 and 5",
      "6, 6 and 5",
    ]);
  });
});
