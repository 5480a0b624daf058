import { describe, expect, it } from "vitest";
import type { AnswerOf, Fault } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { faultKind, faults, frame } from "../../testing/small-items.ts";
import { frameOf } from "../fault-matches/index.ts";
import { saidOfAtoms } from "../../testing/said-of-atoms.ts";
import type { Severity } from "@evenhand/shared/severity";
import { compareFaults } from "./index.ts";

type Faults = AnswerOf<"faults">;

/** A panel of three by three cells: rust in its stages, patches and dents; 25 mm matter, or half of what was disclosed. */
const panel = {
  ...frameOf({
    faultKinds: new Map([
      ["blister", faultKind("blister", { family: "rust", rank: 0 })],
      ["corrosion", faultKind("corrosion", { family: "rust", rank: 1 })],
      ["perforation", faultKind("perforation", { family: "rust", rank: 2, neverTrifling: true })],
      ["patch", faultKind("patch", { family: "repair" })],
      ["dent", faultKind("dent")],
      ["crack", faultKind("crack", { neverTrifling: true })],
    ]),
    drawing: undefined,
  }),
  drawing: frame.drawing,
};

const fault = (kind: string, spot?: string, millimeters?: number): Fault => ({
  kind,
  ...(spot === undefined ? {} : { spot }),
  ...(millimeters === undefined ? {} : { extent: { value: millimeters, unit: "mm" as const } }),
});

const compare = (a: Faults, b: Faults, consequence: Item["consequence"] = "appearance") =>
  saidOfAtoms((say) =>
    compareFaults(
      { a, b, item: { consequence }, frame: panel, severityOf: () => "small", sharedEye: false },
      say,
    ),
  );
/** Kind, outcome and reason of each line of a fault. */
const lines = (...of: Parameters<typeof compare>): string[] =>
  compare(...of).flatMap(({ atom, said }) =>
    atom.of === "fault" ? `${atom.kind} ${said.outcome}: ${said.reason}` : [],
  );

/** What is said of a short dent, by how grave it is there. */
const saidOfSmall = (severity: Severity) => {
  const pair = {
    a: faults([], "all"),
    b: faults([fault("dent", "1-1", 5)]),
    frame: panel,
    sharedEye: false,
  };
  const [line] = saidOfAtoms((say) =>
    compareFaults({ ...pair, item: { consequence: "safety" }, severityOf: () => severity }, say),
  );
  return line?.said.reason;
};

describe("a fault found where the statement denies it", () => {
  it.each<[string, Faults["denied"], string, string]>([
    ["its own kind", ["dent"], "dent", "dent differ: denied-found"],
    ["another stage of it", ["blister"], "corrosion", "corrosion differ: denied-found"],
    ["a milder stage of it", ["corrosion"], "perforation", "perforation differ: denied-found"],
    ["a graver stage alone", ["perforation"], "corrosion", "corrosion unstated: found-bad-not-stated"],
    ["all kinds", "all", "dent", "dent differ: denied-found"],
    ["another family alone", ["crack"], "dent", "dent unstated: found-bad-not-stated"],
    ["several kinds, its own among them", ["crack", "dent"], "dent", "dent differ: denied-found"],
    ["by a name the sheet does not have", ["gouge"], "gouge", "gouge differ: denied-found"],
    ["nothing", [], "dent", "dent unstated: found-bad-not-stated"],
  ])("%s", (_name, denied, kind, expected) => {
    expect(lines(faults([], denied), faults([fault(kind)]))).toEqual([expected]);
    // What else the statement lists takes nothing back.
    const other = fault("scratch", "3-3");
    expect(lines(faults([other], denied), faults([other, fault(kind)]))).toContain(expected);
  });

  it.each<[string, Fault, Item["consequence"], string]>([
    ["smaller than what matters", fault("dent", "1-1", 24), "appearance", "consistent: denied-trifle"],
    ["just what matters", fault("dent", "1-1", 25), "appearance", "differ: denied-found"],
    ["of an extent nobody gave", fault("dent", "1-1"), "appearance", "differ: denied-found"],
    ["a crack, however short", fault("crack", "1-1", 1), "appearance", "differ: denied-found"],
    ["in what carries the car", fault("dent", "1-1", 1), "structure", "differ: denied-found"],
    ["of a kind the sheet does not have", fault("gouge", "1-1", 1), "appearance", "differ: denied-found"],
  ])("is judged by its size: %s", (_name, found, consequence, expected) => {
    for (const stated of [faults([], "all"), faults([fault("scratch")], "all")])
      expect(lines(stated, faults([found]), consequence)).toContain(`${found.kind} ${expected}`);
  });

  it("is a trifle where the fault itself is small there, and never where it has to be repaired or hurts somebody", () => {
    expect(saidOfSmall("small")).toBe("denied-trifle");
    expect(saidOfSmall("repair")).toBe("denied-found");
    expect(saidOfSmall("danger")).toBe("denied-found");
  });

  it("misled nobody by much where it is a trifle, and is said to be better stated than found", () => {
    const [line] = compare(faults([], "all"), faults([fault("dent", "1-1", 10)]));
    expect(line?.said).toMatchObject({ direction: "stated-better", standing: "not-contradicted" });
  });
});

describe("several faults of one family on one panel", () => {
  const agreed = "dent agree: disclosed-in-all";
  const perhaps = "dent consistent: perhaps-in-all";
  const news = "dent unstated: found-bad-not-stated";

  it.each<[string, Fault[], Fault[], string[]]>([
    [
      "as much in all as was disclosed: one long dent against two short ones",
      [fault("dent", "1-1", 100)],
      [fault("dent", "1-1", 60), fault("dent", "3-3", 40)],
      ["dent agree: disclosed-at-least", agreed],
    ],
    [
      "more in all, by just half of what was disclosed",
      [fault("dent", "1-1", 100)],
      [fault("dent", "1-1", 100), fault("dent", "3-3", 50)],
      ["dent agree: same-fault", agreed],
    ],
    [
      "more in all, by more than half of it",
      [fault("dent", "1-1", 100)],
      [fault("dent", "1-1", 100), fault("dent", "3-3", 51)],
      ["dent agree: same-fault", news],
    ],
    [
      "more in all, by just what matters where half of it is less",
      [fault("dent", "1-1", 10)],
      [fault("dent", "1-1", 10), fault("dent", "3-3", 25)],
      ["dent agree: same-fault", agreed],
    ],
    [
      "more in all, by more than what matters",
      [fault("dent", "1-1", 10)],
      [fault("dent", "1-1", 10), fault("dent", "3-3", 26)],
      ["dent agree: same-fault", news],
    ],
    [
      "an extent found that nobody gave: it may be all there",
      [fault("dent", "1-1", 10)],
      [fault("dent", "1-1", 10), fault("dent", "3-3")],
      ["dent agree: same-fault", perhaps],
    ],
    [
      "an extent stated that nobody gave",
      [fault("dent", "1-1")],
      [fault("dent", "1-1", 10), fault("dent", "3-3", 400)],
      ["dent consistent: extent-not-given", perhaps],
    ],
    [
      "as much in all as was disclosed, beside a fault of another family",
      [fault("dent", "1-1", 100), fault("crack", "2-2", 10)],
      [fault("dent", "1-1", 60), fault("dent", "3-3", 40), fault("crack", "2-2", 10)],
      ["dent agree: disclosed-at-least", agreed, "crack agree: same-fault"],
    ],
    [
      "faults of another family add nothing to it, on either side",
      [fault("dent", "1-1", 10), fault("crack", "2-2", 400)],
      [fault("dent", "1-1", 10), fault("dent", "3-3", 400), fault("crack", "2-2", 400)],
      ["dent agree: same-fault", news, "crack agree: same-fault"],
    ],
    [
      "nor do those whose extent nobody gave",
      [fault("dent", "1-1", 10), fault("crack", "2-2")],
      [fault("dent", "1-1", 10), fault("dent", "3-3", 400), fault("crack", "2-2")],
      ["dent agree: same-fault", news, "crack consistent: extents-not-given"],
    ],
    [
      "of a kind the sheet does not have: nothing can be added up",
      [fault("gouge", "1-1", 10)],
      [fault("gouge", "1-1", 10), fault("gouge", "3-3", 10)],
      ["gouge agree: same-fault", "gouge unstated: found-bad-not-stated"],
    ],
  ])("%s", (_name, stated, found, expected) => {
    expect(lines(faults(stated), faults(found))).toEqual(expected);
  });

  it("are both bad where what was disclosed covers them", () => {
    const [, second] = compare(
      faults([fault("dent", "1-1", 100)]),
      faults([fault("dent", "1-1", 60), fault("dent", "3-3", 40)]),
    );
    expect(second?.said).toMatchObject({
      direction: "neither",
      standing: "agreed-fault",
      marks: ["both-bad"],
    });
  });

  it("cover one another where one was found larger than it was stated, and another smaller", () => {
    const found = faults([fault("dent", "1-1", 150), fault("dent", "3-3", 20)]);
    const stated = faults([fault("dent", "1-1", 20), fault("dent", "3-3", 150)]);
    expect(lines(stated, found)).toEqual(["dent agree: disclosed-in-all", "dent agree: disclosed-at-least"]);
    const less = faults([fault("dent", "1-1", 20), fault("dent", "3-3", 20)]);
    expect(lines(less, found)).toEqual(["dent differ: extent-beyond-delta", "dent agree: same-fault"]);
  });

  it("say no more than that where one was found a little larger: it was disclosed", () => {
    expect(lines(faults([fault("dent", "1-1", 40)]), faults([fault("dent", "1-1", 45)]))).toEqual([
      "dent agree: same-fault",
    ]);
    expect(lines(faults([fault("dent", "1-1", 40)]), faults([fault("dent", "1-1", 62)]))).toEqual([
      "dent agree: extent-beyond-chance",
    ]);
  });

  it("are news where the kind is denied beside one of them that is disclosed", () => {
    expect(
      lines(
        faults([fault("dent", "1-1", 10)], "all"),
        faults([fault("dent", "1-1", 10), fault("dent", "3-3", 400)]),
      ),
    ).toEqual(["dent agree: same-fault", "dent differ: denied-found"]);
  });
});

describe("rust of several stages", () => {
  it("is news where it is a hole, unless a hole was shown there too", () => {
    const holes = faults([fault("perforation", "1-1", 10), fault("perforation", "3-3", 10)]);
    expect(lines(faults([fault("corrosion", "1-1", 40)]), holes)).toEqual([
      "corrosion agree: disclosed-milder",
      "perforation unstated: graver-stage",
      "perforation unstated: graver-stage",
    ]);
    const shown = faults([fault("corrosion", "2-2", 40), fault("perforation", "1-1", 10)]);
    expect(lines(shown, holes)).toEqual([
      "corrosion agree: disclosed-milder",
      "perforation agree: same-fault",
      "perforation agree: disclosed-in-all",
    ]);
  });

  it("is no news where only the same stage, or a milder one, was found", () => {
    expect(lines(faults([fault("perforation", "1-1", 30)]), faults([fault("corrosion", "1-1", 30)]))).toEqual(
      ["perforation doubtful: disclosed-not-found", "corrosion agree: disclosed-in-all"],
    );
  });

  it("is no news where more of a later stage was found, as long as it is no hole", () => {
    expect(
      lines(
        faults([fault("blister", "1-1", 60)]),
        faults([fault("corrosion", "1-1", 40), fault("corrosion", "3-3", 30)]),
      ),
    ).toEqual(["corrosion agree: disclosed-at-least", "corrosion agree: disclosed-in-all"]);
  });

  it("is no later stage of a dent", () => {
    expect(lines(faults([fault("dent", "1-1")]), faults([fault("perforation", "1-1")]))).toEqual([
      "perforation unstated: found-bad-not-stated",
      "dent doubtful: disclosed-not-found",
    ]);
  });
});

/** What each line is about, with the faults it joins and its outcome. */
const atoms = (a: Fault[], b: Fault[]) =>
  compare(faults(a), faults(b)).map(({ atom, said }) =>
    atom.of === "fault" ? [atom.kind, atom.spot, atom.a, atom.b, said.outcome] : [],
  );

describe("a patch where the statement showed rust", () => {
  it("is how the rust was mended, and not another fault", () => {
    expect(atoms([fault("corrosion", "1-1")], [fault("patch", "1-1")])).toEqual([
      ["patch", "1-1", 0, 0, "consistent"],
    ]);
    expect(atoms([fault("corrosion")], [fault("patch")])).toEqual([["patch", undefined, 0, 0, "consistent"]]);
  });

  it("is at the spot of the rust: beside it, it is a fault of its own", () => {
    expect(atoms([fault("corrosion", "1-1")], [fault("patch", "2-1")])).toEqual([
      ["corrosion", "1-1", 0, undefined, "doubtful"],
      ["patch", "2-1", undefined, 0, "unstated"],
    ]);
  });

  it("mends nothing but rust, and nothing else mends rust", () => {
    expect(atoms([fault("dent", "1-1")], [fault("patch", "1-1")])).toEqual([
      ["patch", "1-1", undefined, 0, "unstated"],
      ["dent", "1-1", 0, undefined, "doubtful"],
    ]);
    expect(atoms([fault("corrosion", "1-1")], [fault("dent", "1-1")])).toEqual([
      ["corrosion", "1-1", 0, undefined, "doubtful"],
      ["dent", "1-1", undefined, 0, "unstated"],
    ]);
    expect(atoms([fault("patch", "1-1")], [fault("corrosion", "1-1")])).toEqual([
      ["corrosion", "1-1", undefined, 0, "unstated"],
      ["patch", "1-1", 0, undefined, "doubtful"],
    ]);
  });

  it("takes no rust that was found as rust, and no patch that was stated as one", () => {
    const rustAndPatch = [fault("corrosion", "1-1"), fault("patch", "1-1")];
    expect(atoms([fault("corrosion", "1-1")], rustAndPatch)).toEqual([
      ["corrosion", "1-1", 0, 0, "consistent"],
      ["patch", "1-1", undefined, 1, "unstated"],
    ]);
    expect(atoms(rustAndPatch, [fault("patch", "1-1")])).toEqual([
      ["corrosion", "1-1", 0, undefined, "doubtful"],
      ["patch", "1-1", 1, 0, "consistent"],
    ]);
  });

  it("mends one rust, and each rust is mended once", () => {
    expect(
      atoms(
        [fault("corrosion", "1-1"), fault("corrosion", "3-3"), fault("dent", "2-2")],
        [fault("patch", "3-3"), fault("patch", "3-3"), fault("patch", "1-1"), fault("dent", "2-2")],
      ),
    ).toEqual([
      ["patch", "1-1", 0, 2, "consistent"],
      ["patch", "3-3", 1, 0, "consistent"],
      ["patch", "3-3", undefined, 1, "unstated"],
      ["dent", "2-2", 2, 3, "consistent"],
    ]);
  });

  it("is larger than what was shown, whatever else was patched there", () => {
    const stated = faults([fault("corrosion", "1-1", 20)]);
    expect(lines(stated, faults([fault("patch", "1-1", 300), fault("patch", "3-3")]))).toEqual([
      "patch differ: extent-beyond-delta",
      "patch unstated: found-bad-not-stated",
    ]);
  });
});

describe("an answer of none at all", () => {
  it("is set against none at all, and against some kinds, by what each says", () => {
    expect(compare(faults([], "all"), faults([], "all"))).toEqual([
      {
        atom: { of: "denial", kind: "all", by: "both" },
        said: { outcome: "agree", reason: "denied-by-both", direction: "neither", standing: "confirmed" },
      },
    ]);
    expect(compare(faults([fault("dent")], "all"), faults([], "all")).map(({ said }) => said.reason)).toEqual(
      ["disclosed-not-found", "denied-by-both"],
    );
  });
});
