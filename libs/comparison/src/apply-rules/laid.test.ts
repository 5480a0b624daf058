import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import { entry, readingFigures } from "../../testing/small-entries.ts";
import { sheet } from "../../testing/small-reports.ts";
import { applyRules } from "./index.ts";

/** A claim that is a figure, what is read against it, and a claim that is a word. */
const RATIO = "driveline.axle-ratio";
const TURNS = "driveline.axle-turns";
const SPEED = "road.revolutions";
const MILES = "identity.miles-claim";

const of = (side: "a" | "b", item: string): EntryReference => ({ side, item, position: "" });
const check = (more: Partial<CrossCheck>): CrossCheck => ({
  rule: "axle-ratio",
  verdict: "breaks",
  reason: "other-ratio",
  severity: "worth",
  figures: {},
  over: "both-reports",
  strength: "contradicts",
  reads: [],
  claim: null,
  bad: [],
  decides: [],
  ...more,
});
const accuses = (...items: string[]): CrossCheck => check({ bad: items.map((item) => of("b", item)) });
const lay = (entries: readonly Entry[], ...checks: CrossCheck[]): Entry[] =>
  applyRules(entries, checks, sheet);
const laid = (line: Entry, ...checks: CrossCheck[]): Entry | undefined => lay([line], ...checks)[0];

/** Seen by the inspector alone, and sound. */
const sound = (item = TURNS, more: Partial<Entry> = {}): Entry =>
  entry({
    item,
    outcome: "consistent",
    reason: "seen-sound-not-stated",
    standing: "not-mentioned",
    calls: { a: null, b: "good" },
    finding: { a: null, b: 0 },
    coverageOnly: true,
    ...more,
  });
/** Found by the inspector alone, and bad. */
const bad = (more: Partial<Entry> = {}): Entry =>
  entry({
    item: TURNS,
    outcome: "unstated",
    reason: "found-bad-not-stated",
    standing: "not-mentioned",
    calls: { a: null, b: "repair" },
    severity: "repair",
    finding: { a: null, b: 0 },
    ...more,
  });
/** Read by the inspector alone, and nothing of the item judges it. */
const unjudged = (more: Partial<Entry> = {}): Entry =>
  bad({
    reason: "found-without-yardstick",
    calls: { a: null, b: "no-yardstick" },
    marks: ["no-yardstick"],
    ...more,
  });
/** Claimed, and nobody looked at it. */
const unseen = (item = RATIO, more: Partial<Entry> = {}): Entry =>
  entry({
    item,
    outcome: "unseen",
    reason: "stated-not-inspected",
    standing: "unseen",
    calls: { a: "good", b: null },
    severity: "repair",
    finding: { a: 0, b: null },
    ...more,
  });
const alike = (item: string, more: Partial<Entry> = {}): Entry =>
  entry({ item, figures: readingFigures(0), reason: "within-delta", ...more });

describe("what a broken rule read", () => {
  it("is bad and was not stated, where only the inspector saw it and thought it sound", () => {
    const line = laid(sound(), accuses(TURNS));
    expect(line).toMatchObject({
      outcome: "unstated",
      reason: "found-bad-by-figures",
      standing: "not-mentioned",
      severity: "worth",
      calls: { a: null, b: "worth" },
      marks: ["by-figures"],
    });
    expect(line?.coverageOnly).toBeUndefined();
  });

  it.each<[string, Entry, CrossCheck["severity"], Partial<Entry>]>([
    [
      "as grave as the rule says, where that is graver",
      bad(),
      "worth",
      { severity: "worth", calls: { a: null, b: "repair" } },
    ],
    [
      "as grave as it was found, where that is",
      bad(),
      "small",
      { severity: "repair", calls: { a: null, b: "repair" } },
    ],
    [
      "as grave as the rule says, where nothing else judged it",
      unjudged(),
      "small",
      { severity: "small", calls: { a: null, b: "small" } },
    ],
    [
      "hardly, where the rule does not say",
      sound(),
      null,
      { severity: "small", calls: { a: null, b: "small" } },
    ],
  ])("is %s", (_name, line, severity, expected) => {
    expect(laid(line, { ...accuses(TURNS), severity })).toMatchObject({
      ...expected,
      outcome: "unstated",
      reason: "found-bad-by-figures",
      marks: ["by-figures"],
    });
  });

  it("is as grave as the graver of two rules, and said once", () => {
    const twice = [{ ...accuses(TURNS), severity: "danger" as const }, accuses(TURNS)];
    expect(laid(sound(), ...twice)?.severity).toBe("danger");
    expect(laid(bad({ marks: ["by-figures", "over-limit"] }), accuses(TURNS))?.marks).toEqual([
      "over-limit",
      "by-figures",
    ]);
  });

  it("is bad on both sides where both read it alike", () => {
    const agreed = {
      outcome: "agree",
      standing: "agreed-fault",
      severity: "worth",
      calls: { a: "good", b: "worth" },
    };
    expect(laid(entry({ item: TURNS, marks: ["hedged"] }), accuses(TURNS))).toMatchObject({
      ...agreed,
      marks: ["hedged", "both-bad", "by-figures"],
    });
    expect(laid(entry({ item: TURNS, marks: ["both-bad", "by-figures"] }), accuses(TURNS))?.marks).toEqual([
      "both-bad",
      "by-figures",
    ]);
    expect(laid(entry({ item: TURNS, outcome: "consistent" }), accuses(TURNS))).toMatchObject(agreed);
  });

  it.each<[string, Entry]>([
    ["where the two differ already", entry({ item: TURNS, outcome: "differ", severity: "small" })],
    ["where it is in doubt", entry({ item: TURNS, outcome: "doubtful", severity: "small" })],
    [
      "where the statement says nothing of it",
      entry({ item: TURNS, outcome: "consistent", finding: { a: null, b: 0 } }),
    ],
    ["where nobody looked at it", unseen(TURNS)],
    [
      "where it is one kind of fault that was denied",
      entry({ item: TURNS, atom: { of: "denial", kind: "dent", by: "b" } }),
    ],
  ])("only makes the line as grave: %s", (_name, line) => {
    expect(laid(line, accuses(TURNS))).toEqual({ ...line, severity: "worth" });
  });

  it("never touches the line of a single fault, nor of another item", () => {
    const fault = bad({ atom: { of: "fault", kind: "dent", b: 0 } });
    const other = sound("electrics.horn");
    const lines = [fault, other];
    const after = lay(lines, accuses(TURNS));
    expect(after).toEqual([fault, other]);
    expect(after).not.toBe(lines);
  });

  it("is not bad by a mere hint, unless the inspector alone saw it", () => {
    const hint: CrossCheck = { ...accuses(TURNS), strength: "hint" };
    expect(laid(sound(), hint)).toMatchObject({
      outcome: "unstated",
      severity: "worth",
      marks: ["by-figures"],
    });
    expect(laid(bad(), hint)).toMatchObject({
      outcome: "unstated",
      severity: "worth",
      marks: ["by-figures"],
    });
    const agreed = entry({ item: TURNS });
    expect(laid(agreed, hint)).toEqual(agreed);
  });
});

/** Of which lines figures decided. */
const byFigures = (entries: readonly Entry[], ...checks: CrossCheck[]) =>
  lay(entries, ...checks).map(({ marks }) => marks.includes("by-figures"));

describe("which of several places does not fit", () => {
  const both = accuses(TURNS, SPEED);

  it.each<[string, Entry, Entry, boolean[]]>([
    ["both, where nothing tells them apart", sound(), sound(SPEED), [true, true]],
    ["what was not read alike", alike(TURNS), sound(SPEED), [false, true]],
    [
      "a number read alike",
      entry({ item: TURNS, figures: { of: "code", a: "1", b: "1", passes: null, differsAt: [] } }),
      sound(SPEED),
      [false, true],
    ],
    ["both, where both were read alike", alike(TURNS), alike(SPEED), [true, true]],
    ["both, where one was only said alike", entry({ item: TURNS }), sound(SPEED), [true, true]],
    ["both, where one may be otherwise", alike(TURNS, { outcome: "consistent" }), sound(SPEED), [true, true]],
    ["what is bad by itself, where the other is good", bad(), sound(SPEED), [true, false]],
    ["what is bad, and what nothing judges", bad(), unjudged({ item: SPEED }), [true, true]],
  ])("%s", (_name, one, other, expected) => {
    expect(byFigures([one, other], both)).toEqual(expected);
    expect(byFigures([other, one], both)).toEqual(expected.toReversed());
  });
});

const decides = (more: Partial<CrossCheck> = {}) =>
  check({ decides: [of("a", RATIO)], reads: [of("a", RATIO), of("b", TURNS)], ...more });

describe("a claim that a broken rule decides", () => {
  it("falls to figures, whatever the inspector answered there", () => {
    const fallen = {
      outcome: "differ",
      reason: "falls-to-figures",
      direction: "stated-better",
      standing: "contradicted-by-figures",
      severity: "worth",
    };
    expect(laid(unseen(), decides())).toMatchObject({ ...fallen, marks: ["by-figures"] });
    expect(
      laid(entry({ item: RATIO, marks: ["both-bad", "hedged", "no-yardstick"] }), decides()),
    ).toMatchObject({
      ...fallen,
      marks: ["hedged", "by-figures"],
    });
    expect(
      laid(entry({ item: RATIO, outcome: "doubtful", reason: "beyond-chance" }), decides()),
    ).toMatchObject(fallen);
    expect(laid(sound(RATIO), decides())?.coverageOnly).toBeUndefined();
    expect(laid(unseen(RATIO, { severity: "halt" }), decides())?.severity).toBe("halt");
  });

  it("is a slip of the pen where it was probably misread, as grave as the rule says", () => {
    for (const reason of ["one-look-alike", "one-dropped", "two-exchanged", "perhaps-the-unit"] as const) {
      const line = entry({ item: RATIO, outcome: "doubtful", reason, severity: "halt" });
      expect(laid(line, decides({ severity: "small" }))).toEqual({ ...line, severity: "small" });
    }
  });

  it("is the statement's: what the inspector said there falls to nothing", () => {
    const line = unseen();
    expect(laid(line, check({ decides: [of("b", RATIO)] }))).toEqual(line);
  });

  it("makes what was read against it bad, where nothing else judges that, and one item alone was read", () => {
    const laidOn = { reason: "found-bad-by-figures", severity: "worth", marks: ["by-figures"] };
    expect(lay([unseen(), unjudged()], decides())[1]).toMatchObject(laidOn);
    expect(lay([unseen(), sound()], decides())[1]).toEqual(sound());
    const twoItems = decides({ reads: [of("b", TURNS), of("b", SPEED)] });
    expect(lay([unseen(), unjudged()], twoItems)[1]).toEqual(unjudged());
    const ownWords = decides({ reads: [of("a", TURNS), of("b", SPEED)] });
    expect(lay([unseen(), unjudged()], ownWords)[1]).toEqual(unjudged());
  });

  it("stands where both read that number alike: it is the rest that does not fit", () => {
    const [claim, read] = lay([alike(RATIO), sound()], decides());
    expect(claim).toEqual(alike(RATIO));
    expect(read).toMatchObject({ outcome: "unstated", reason: "found-bad-by-figures", severity: "worth" });
    const stated = lay([alike(RATIO), sound()], decides({ reads: [of("a", TURNS)] }));
    expect(stated[1]).toEqual(sound());
    const [onlySaid] = lay([entry({ item: RATIO }), sound()], decides());
    expect(onlySaid?.outcome).toBe("differ");
  });
});

const holds = (more: Partial<CrossCheck> = {}) =>
  check({ verdict: "holds", severity: null, reads: [of("b", TURNS)], decides: [of("a", RATIO)], ...more });

describe("a rule that holds", () => {
  it("is a yardstick of what it read and nothing else judges", () => {
    expect(laid(unjudged({ marks: ["no-yardstick", "by-eye"] }), holds())).toMatchObject({
      outcome: "consistent",
      reason: "seen-sound-not-stated",
      calls: { a: null, b: "good" },
      severity: null,
      coverageOnly: true,
      marks: ["by-eye"],
    });
  });

  it.each<[string, Entry, CrossCheck[]]>([
    ["what is bad by its own", bad(), [holds()]],
    ["what both speak of", entry({ item: TURNS, marks: ["no-yardstick"] }), [holds()]],
    ["what it only reminds of", unjudged(), [holds({ strength: "reminder" })]],
    ["what the statement said", unjudged(), [holds({ reads: [of("a", TURNS)] })]],
    ["what another rule broke on", unjudged(), [holds(), check({ reads: [of("b", TURNS)] })]],
    ["what it cannot tell", unjudged(), [holds({ verdict: "cannot-tell" })]],
  ])("makes nothing good of %s", (_name, line, checks) => {
    expect(laid(line, ...checks)).toEqual(line);
  });

  it("bears out a figure that was claimed and that nobody looked at", () => {
    expect(laid(unseen(RATIO, { marks: ["hedged", "by-figures"] }), holds())).toMatchObject({
      outcome: "consistent",
      reason: "borne-out-by-figures",
      standing: "not-contradicted",
      severity: null,
      marks: ["hedged", "by-figures"],
    });
  });

  it.each<[string, Entry, CrossCheck[]]>([
    ["a word", unseen(MILES), [holds({ decides: [of("a", MILES)] })]],
    ["what was claimed bad", unseen(RATIO, { calls: { a: "repair", b: null } }), [holds()]],
    ["what was not claimed", unseen(RATIO, { finding: { a: null, b: null } }), [holds()]],
    ["what was claimed not to be known", unseen(RATIO, { calls: { a: null, b: null } }), [holds()]],
    ["what was looked at", entry({ item: RATIO }), [holds()]],
    ["what the inspector said", unseen(), [holds({ decides: [of("b", RATIO)] })]],
    ["a claim by itself, with nothing read against it", unseen(), [holds({ reads: [of("a", RATIO)] })]],
    ["what another rule broke on", unseen(), [holds(), check({ reads: [of("a", RATIO)] })]],
    ["what it only reminds of", unseen(), [holds({ strength: "reminder" })]],
  ])("bears out nothing of %s", (_name, line, checks) => {
    expect(laid(line, ...checks)).toEqual(line);
  });
});
