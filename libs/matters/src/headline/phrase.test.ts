import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import { admitted, line, sheet, unasked, unseen } from "../../testing/lines.ts";
import { phraseOf, saidOf } from "./phrase.ts";

const report = (answer: Answer | null) => {
  const said: Finding | null =
    answer === null ? null : { item: "x.y", position: "", answer, firmness: "asserted", basis: "seen" };
  return { findings: said === null ? [] : [said], scales: [] };
};
const reports = (a: Answer | null, b: Answer | null) => ({ a: report(a), b: report(b), sheet });
const phrase = (entry: Entry, a: Answer | null, b: Answer | null): string =>
  phraseOf(entry, reports(a, b)).replaceAll("\u00A0", " ");
const works = (value: "yes" | "no"): Answer => ({ kind: "working", value });
const read = (...values: number[]): Answer => ({
  kind: "reading",
  unit: "mm",
  values: values.map((value) => ({ value })),
});
const faults = (kinds: string[], denied: "all" | string[] = []): Answer => ({
  kind: "faults",
  found: kinds.map((kind) => ({ kind })),
  denied,
});
const horn = "electrics.horn";
const hood = "body.faults@hood";

describe("a line in a few words", () => {
  it("says what was found, and what was stated where anything was", () => {
    expect(phrase(line(horn), works("yes"), works("no"))).toBe("horn: not working (stated: working)");
    expect(phrase(line(horn, { finding: { a: null, b: 0 } }), null, works("no"))).toBe("horn: not working");
  });

  it("of what both say is bad tells whether they say the same", () => {
    expect(phrase(admitted(horn), works("no"), works("no"))).toBe("horn: not working (as stated)");
    expect(
      phrase(
        admitted("engine.coolant"),
        { kind: "choice", option: "low" },
        { kind: "choice", option: "oily" },
      ),
    ).toBe("coolant: oily (stated: low)");
    expect(phrase(line(horn, { outcome: "agree" }), works("no"), works("no"))).toBe(
      "horn: not working (stated: not working)",
    );
  });

  it("of what was not seen tells why, where the inspector said so", () => {
    const why: Answer = { kind: "not-seen", reason: "no-tool" };
    expect(phrase(unseen(horn), works("yes"), why)).toBe("horn: not seen (no tool for it) (stated: working)");
    expect(phrase(unseen(horn, { finding: { a: 0, b: null } }), works("yes"), null)).toBe(
      "horn: not seen (stated: working)",
    );
    expect(phrase(unasked(horn), null, null)).toBe("horn: not seen");
  });

  it("of what figures contradict, though nobody looked, says just that", () => {
    const ruled = line(horn, { standing: "contradicted-by-figures", finding: { a: 0, b: null } });
    expect(phrase(ruled, works("yes"), null)).toBe("horn: stated working, which figures contradict");
  });

  it("gives three readings, and more as from lowest to highest", () => {
    const entry = line("brakes.lining-thickness@left-front");
    expect(phrase(entry, null, read(3, 1, 2))).toBe("lining or pad thickness, left front: 3, 1 and 2 mm");
    expect(phrase(entry, null, read(3, 10, 2, 4))).toBe("lining or pad thickness, left front: 2 and 10 mm");
  });
});

const dent = (more: { a?: number; b?: number }): Entry =>
  line(hood, { atom: { of: "fault", kind: "dent", ...more } });
const denial = (kind: string, by: "a" | "b"): Entry => line(hood, { atom: { of: "denial", kind, by } });

describe("a line about one fault of several", () => {
  it("names that one on the side that has it", () => {
    const found = faults(["corrosion", "dent"], ["filler"]);
    expect(phrase(dent({ b: 1 }), faults([], "all"), found)).toBe(
      "panel faults, hood: dent (stated: no faults)",
    );
    expect(phrase(dent({ a: 0, b: 1 }), faults(["dent"]), found)).toBe(
      "panel faults, hood: dent (stated: dent)",
    );
  });

  it("says nothing of the other faults of a side that has it not, unless that side denied it or all", () => {
    const other = faults(["corrosion"], ["dent"]);
    expect(saidOf(dent({ b: 0 }), "a", reports(other, faults(["dent"])))).toBeUndefined();
    expect(phrase(dent({ b: 0 }), faults([], ["dent"]), faults(["dent"]))).toBe(
      "panel faults, hood: dent (stated: no dent)",
    );
    expect(phrase(dent({ b: 0 }), faults(["corrosion"], "all"), faults(["dent"]))).toBe(
      "panel faults, hood: dent (stated: corrosion)",
    );
  });

  it("or about a denial says what is denied, on the side that denies it", () => {
    const both = reports(faults(["corrosion"], ["dent", "filler"]), faults(["corrosion"], ["dent"]));
    expect(saidOf(denial("filler", "a"), "a", both)).toBe("no filler");
    expect(saidOf(denial("filler", "a"), "b", both)).toBe("corrosion and no dent");
    expect(saidOf(denial("all", "a"), "a", reports(faults([], "all"), null))).toBe("no faults");
    expect(saidOf(line(horn), "a", reports(works("yes"), null))).toBe("working");
  });

  it("of an item that the sheet has not says nothing", () => {
    expect(saidOf(line("electrics.unheard-of"), "b", reports(null, works("no")))).toBeUndefined();
    expect(phrase(line("electrics.unheard-of"), works("yes"), works("no"))).toBe("unheard of: found");
  });
});
