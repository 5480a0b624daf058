import { describe, expect, it } from "vitest";
import type { AnswerOf } from "@evenhand/shared/answer";
import { saidOfAtoms } from "../../testing/said-of-atoms.ts";
import { faults, frame } from "../../testing/small-items.ts";
import { compareFaults } from "./index.ts";

type Faults = AnswerOf<"faults">;
const dent = (millimeters?: number, spot = "1-1") => ({
  kind: "dent",
  spot,
  extent: millimeters === undefined ? undefined : { value: millimeters, unit: "mm" as const },
});
const compare = (a: Faults, b: Faults, sharedEye = false) =>
  saidOfAtoms((say) =>
    compareFaults(
      { a, b, item: { consequence: "appearance" }, frame, severityOf: () => "small", sharedEye },
      say,
    ),
  ).map(({ atom, said }) => ({ ...said, atom }));
const only = (a: Faults, b: Faults, sharedEye = false) => {
  const entries = compare(a, b, sharedEye);
  expect(entries).toHaveLength(1);
  return entries[0];
};

const kinds = (a: Faults, b: Faults) =>
  compare(a, b).map(({ atom }) => (atom.of === "denial" ? `${atom.kind} ${atom.by}` : ""));
describe("a fault both found", () => {
  it("is an agreed fault, its extents compared as readings by eye", () => {
    const entry = only(faults([dent(40)]), faults([dent(42)]));
    expect(entry).toMatchObject({
      outcome: "agree",
      reason: "same-fault",
      standing: "agreed-fault",
      direction: "neither",
    });
    expect(entry?.figures).toMatchObject({ of: "reading", unit: "mm", difference: -2, delta: 25 });
    expect(entry?.atom).toEqual({ of: "fault", kind: "dent", spot: "1-1", a: 0, b: 0 });
  });

  it("differs where the extents do, and says which way", () => {
    expect(only(faults([dent(20)]), faults([dent(300)]))).toMatchObject({
      outcome: "differ",
      reason: "extent-beyond-delta",
      direction: "stated-better",
      standing: "differs",
    });
    expect(only(faults([dent(300)]), faults([dent(20)]))).toMatchObject({
      outcome: "agree",
      reason: "disclosed-at-least",
    });
  });

  it("agrees, both bad, where the extents may differ by what matters", () => {
    expect(only(faults([dent(40)]), faults([dent(65)]))).toMatchObject({
      outcome: "agree",
      reason: "extent-beyond-chance",
      standing: "agreed-fault",
    });
  });

  it("loses the error of the eye where one person looked for both", () => {
    expect(only(faults([dent(40)]), faults([dent(64)]), true)).toMatchObject({
      outcome: "agree",
      standing: "agreed-fault",
    });
  });

  it("is an agreed fault without extents, and with one of them, and no more than consistent", () => {
    expect(only(faults([dent()]), faults([dent()]))).toMatchObject({
      outcome: "consistent",
      reason: "extents-not-given",
      standing: "agreed-fault",
    });
    expect(only(faults([dent()]), faults([dent(40)]))).toMatchObject({
      outcome: "consistent",
      reason: "extent-not-given",
      standing: "agreed-fault",
    });
    expect(only(faults([dent(40)]), faults([dent()]))).toMatchObject({
      outcome: "consistent",
      reason: "extent-not-given",
    });
  });

  it("is no more than consistent where one side says not where: rust anywhere is not this rust", () => {
    const anywhere = (millimeters: number) => ({ ...dent(millimeters), spot: undefined });
    for (const [stated, found] of [
      [anywhere(40), dent(40)],
      [dent(40), anywhere(40)],
      [anywhere(40), anywhere(40)],
    ] as const) {
      expect(only(faults([stated]), faults([found]))).toMatchObject({
        outcome: "consistent",
        reason: "place-not-given",
        standing: "agreed-fault",
        marks: ["both-bad"],
      });
    }
    expect(only(faults([dent(40)]), faults([dent(40)]))?.outcome).toBe("agree");
    expect(only(faults([anywhere(20)]), faults([dent(400)]))?.outcome).toBe("differ");
  });

  it("is shown where the inspection found it", () => {
    expect(only(faults([dent(40, "1-1")]), faults([dent(40, "2-1")]))?.atom).toMatchObject({ spot: "2-1" });
  });
});

describe("a fault only one side found", () => {
  it.each<[string, Faults, Faults, object]>([
    [
      "found, not stated",
      faults([]),
      faults([dent()]),
      {
        outcome: "unstated",
        reason: "found-bad-not-stated",
        direction: "neither",
        standing: "not-mentioned",
      },
    ],
    [
      "found, the kind denied",
      faults([], ["dent"]),
      faults([dent()]),
      { outcome: "differ", reason: "denied-found", direction: "stated-better", standing: "differs" },
    ],
    [
      "found, none at all stated",
      faults([], "all"),
      faults([dent()]),
      { outcome: "differ", reason: "denied-found" },
    ],
    [
      "stated, not found",
      faults([dent()]),
      faults([]),
      { outcome: "doubtful", reason: "disclosed-not-found", direction: "found-better", standing: "in-doubt" },
    ],
    [
      "stated, the kind denied",
      faults([dent()]),
      faults([], ["dent"]),
      { outcome: "doubtful", reason: "disclosed-not-found" },
    ],
    [
      "stated, none at all found",
      faults([dent()]),
      faults([], "all"),
      { outcome: "doubtful", reason: "disclosed-not-found" },
    ],
  ])("%s", (_name, a, b, expected) => {
    expect(only(a, b)).toMatchObject(expected);
  });

  it("keeps a denial of another kind apart", () => {
    const entries = compare(faults([], ["crack"]), faults([dent()]));
    expect(entries.map(({ outcome, reason }) => [outcome, reason])).toEqual([
      ["unstated", "found-bad-not-stated"],
      ["consistent", "denied-not-contradicted"],
    ]);
  });
});

describe("a denial", () => {
  const dentDenied = { of: "denial", kind: "dent" };

  it("of both sides agrees", () => {
    expect(only(faults([], ["dent"]), faults([], ["dent"]))).toMatchObject({
      outcome: "agree",
      reason: "denied-by-both",
      standing: "confirmed",
      atom: { ...dentDenied, by: "both" },
    });
    expect(only(faults([], "all"), faults([], "all"))).toMatchObject({
      outcome: "agree",
      atom: { kind: "all", by: "both" },
    });
  });

  it("of a kind agrees with none at all on the other side, which also says more", () => {
    const entries = compare(faults([], ["dent"]), faults([], "all"));
    expect(entries).toMatchObject([
      { outcome: "agree", reason: "denied-by-both", atom: { ...dentDenied, by: "a" } },
      {
        outcome: "consistent",
        reason: "seen-sound-not-stated",
        coverageOnly: true,
        atom: { kind: "all", by: "b" },
      },
    ]);
  });

  it("of the statement alone is not contradicted", () => {
    expect(only(faults([], ["dent"]), faults([]))).toMatchObject({
      outcome: "consistent",
      reason: "denied-not-contradicted",
      standing: "not-contradicted",
    });
  });

  it("of the inspection alone is seen, sound and not stated", () => {
    expect(only(faults([]), faults([], ["dent"]))).toMatchObject({
      outcome: "consistent",
      reason: "seen-sound-not-stated",
      standing: "not-mentioned",
      coverageOnly: true,
    });
  });

  it("beside faults both sides list means none other, and agrees", () => {
    const [both, rest] = compare(faults([dent()], "all"), faults([dent()], "all"));
    expect(both).toMatchObject({ outcome: "consistent", standing: "agreed-fault" });
    expect(rest).toMatchObject({ outcome: "agree", reason: "denied-by-both" });
  });

  it("keeps its own entry where only the other side's is contradicted", () => {
    const entries = compare(faults([dent()], "all"), faults([], "all"));
    expect(entries).toMatchObject([
      { outcome: "doubtful", reason: "disclosed-not-found" },
      { outcome: "agree", reason: "denied-by-both", atom: { kind: "all", by: "a" } },
    ]);
  });

  it("goes by the item's kinds, each once, however written", () => {
    const entries = compare(faults([], ["crack", "dent", "crack"]), faults([]));
    expect(entries.map(({ atom }) => atom)).toMatchObject([{ kind: "dent" }, { kind: "crack" }]);
  });
});

describe("several faults", () => {
  const two = faults([dent(40, "1-1"), dent(60, "3-3")]);

  it("each have their own entry, by their index on either side", () => {
    const entries = compare(two, faults([dent(60, "3-3"), dent(300, "1-1")]));
    expect(entries).toMatchObject([
      {
        outcome: "differ",
        atom: { spot: "1-1", a: 0, b: 1 },
        figures: { a: { mean: 40 }, b: { mean: 300 } },
      },
      { outcome: "agree", atom: { spot: "3-3", a: 1, b: 0 }, figures: { a: { mean: 60 }, b: { mean: 60 } } },
    ]);
  });

  it("are left over one by one", () => {
    expect(compare(two, faults([dent(40, "1-1")]))).toMatchObject([
      { reason: "same-fault" },
      { reason: "disclosed-not-found", atom: { spot: "3-3", a: 1 } },
    ]);
    expect(compare(faults([dent(40, "1-1")]), two)).toMatchObject([
      { reason: "same-fault" },
      { reason: "found-bad-not-stated", atom: { spot: "3-3", b: 1 } },
    ]);
  });

  it("need no spot", () => {
    const [entry] = compare(faults([{ kind: "dent" }]), faults([{ kind: "dent" }]));
    expect(entry?.atom).toEqual({ of: "fault", kind: "dent", a: 0, b: 0 });
    expect(Object.keys(entry?.atom ?? {})).not.toContain("spot");
  });
});

describe("none found on either side", () => {
  it("tells none at all from some kinds", () => {
    expect(kinds(faults([], "all"), faults([], ["dent"]))).toEqual(["all a", "dent b"]);
    expect(kinds(faults([], ["dent"]), faults([], "all"))).toEqual(["dent a", "all b"]);
    expect(kinds(faults([], "all"), faults([], "all"))).toEqual(["all both"]);
  });
});

describe("an answer that lists nothing and denies nothing", () => {
  it("claims nothing", () => {
    expect(only(faults([]), faults([]))).toMatchObject({
      outcome: "unseen",
      reason: "nothing-claimed",
      atom: { of: "answer" },
    });
  });
});
