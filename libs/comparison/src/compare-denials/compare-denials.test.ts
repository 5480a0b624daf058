import { describe, expect, it } from "vitest";
import { saidOfAtoms } from "../../testing/said-of-atoms.ts";
import { faults, frame } from "../../testing/small-items.ts";
import type { AtomJudgment } from "../judgment/index.ts";
import { compareDenials, deniedKinds } from "./index.ts";

const found = (
  kind: string,
  reason: "denied-found" | "disclosed-not-found" | "same-fault",
): AtomJudgment => ({
  atom: { of: "fault", kind },
  said: { outcome: "differ", reason, direction: "neither", standing: "differs" },
});
const compare = (a: string[] | "all", b: string[] | "all", entries: AtomJudgment[] = []) =>
  saidOfAtoms((say) => compareDenials(faults([], a), faults([], b), frame, entries, say)).map(
    ({ atom, said }) => [atom.of === "denial" ? `${atom.kind} ${atom.by}` : "", said.reason, said.standing],
  );

describe("compareDenials", () => {
  it.each<[string, string[] | "all", string[] | "all", string[][]]>([
    ["a kind by both", ["dent"], ["dent"], [["dent both", "denied-by-both", "confirmed"]]],
    ["all by both", "all", "all", [["all both", "denied-by-both", "confirmed"]]],
    ["a kind by A", ["dent"], [], [["dent a", "denied-not-contradicted", "not-contradicted"]]],
    ["a kind by B", [], ["dent"], [["dent b", "seen-sound-not-stated", "not-mentioned"]]],
    [
      "a kind by A, all by B",
      ["dent"],
      "all",
      [
        ["dent a", "denied-by-both", "confirmed"],
        ["all b", "seen-sound-not-stated", "not-mentioned"],
      ],
    ],
    [
      "all by A, a kind by B",
      "all",
      ["dent"],
      [
        ["all a", "denied-not-contradicted", "not-contradicted"],
        ["dent b", "denied-by-both", "confirmed"],
      ],
    ],
    ["nothing by either", [], [], []],
  ])("%s", (_name, a, b, expected) => {
    expect(compare(a, b)).toEqual(expected);
  });

  it("leaves a denial to the fault that contradicts it", () => {
    expect(compare(["dent", "crack"], [], [found("dent", "denied-found")])).toEqual([
      ["crack a", "denied-not-contradicted", "not-contradicted"],
    ]);
    expect(compare([], ["dent", "crack"], [found("dent", "disclosed-not-found")])).toEqual([
      ["crack b", "seen-sound-not-stated", "not-mentioned"],
    ]);
    expect(compare("all", [], [found("dent", "denied-found")])).toEqual([]);
    expect(compare([], "all", [found("dent", "disclosed-not-found")])).toEqual([]);
  });

  it("is contradicted by nothing else", () => {
    expect(compare(["dent"], [], [found("crack", "denied-found")])).toHaveLength(1);
    expect(compare(["dent"], [], [found("dent", "disclosed-not-found")])).toHaveLength(1);
    expect(compare([], ["dent"], [found("dent", "denied-found")])).toHaveLength(1);
    expect(compare(["dent"], [], [found("dent", "same-fault")])).toHaveLength(1);
    const denial: AtomJudgment = {
      ...found("dent", "denied-found"),
      atom: { of: "denial", kind: "dent", by: "a" },
    };
    expect(compare(["dent"], [], [denial])).toHaveLength(1);
  });

  it("says who denies just that", () => {
    expect(compare(["dent"], ["dent"], [found("dent", "disclosed-not-found")])).toEqual([
      ["dent a", "denied-not-contradicted", "not-contradicted"],
    ]);
  });
});

describe("deniedKinds", () => {
  it("has each kind once, in the order of the item's kinds, unknown ones by name at last", () => {
    expect(deniedKinds(faults([], ["zz", "crack", "dent", "crack", "aa"]), frame)).toEqual([
      "dent",
      "crack",
      "aa",
      "zz",
    ]);
    expect(deniedKinds(faults([], ["crack"]), frame)).toEqual(["crack"]);
    expect(deniedKinds(faults([], "all"), frame)).toEqual(["all"]);
  });
});
