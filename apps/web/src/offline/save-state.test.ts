import { describe, expect, test } from "vitest";
import type { KeptFinding } from "./store.ts";
import {
  noWrites,
  saveWord,
  sealBlocks,
  standingOf,
  withWrites,
  writesAfter,
  type Standing,
} from "./save-state.ts";

const horn = "electrics.horn@";
const change = (value: "yes" | "no") => ({
  finding: {
    item: "electrics.horn",
    position: "",
    answer: { kind: "working", value },
    firmness: "asserted",
    basis: "seen",
  } as const,
});
const kept = (state: KeptFinding["state"], more: Partial<KeptFinding> = {}): KeptFinding => ({
  report: "r",
  place: horn,
  base: 1,
  state,
  ...change("yes"),
  ...more,
});
const quiet: Standing = {
  keeping: 0,
  lost: 0,
  waiting: 0,
  conflicts: 0,
  refused: 0,
  unread: 0,
  connection: "reached",
};

describe("writes to this device", () => {
  test("a write under way is being kept, until it is", () => {
    const began = writesAfter(noWrites, { type: "began", nth: 1, place: horn, change: change("no") });
    expect(began.underWay.size).toBe(1);
    expect(writesAfter(began, { type: "kept", nth: 1, place: horn }).underWay.size).toBe(0);
  });

  test("what is being kept is seen at once, so that nothing leads back to what was just answered, nor writes over it", () => {
    const began = [
      { type: "began", nth: 1, place: horn, change: change("yes") } as const,
      { type: "began", nth: 2, place: horn, change: change("no") } as const,
    ].reduce(writesAfter, noWrites);
    const seen = withWrites("r", new Map(), began);
    expect(seen.get(horn)).toMatchObject({ base: null, finding: { answer: { value: "no" } } });
    expect(saveWord(standingOf(seen, began, "reached"))).toBe("keeping");
  });

  test("while it is being settled which of two stands, both still do", () => {
    const inConflict = new Map([[horn, kept("conflict")]]);
    const settling = writesAfter(noWrites, { type: "began", nth: 1, place: horn, change: null });
    expect(withWrites("r", inConflict, settling).get(horn)).toEqual(kept("conflict"));
    const typing = writesAfter(noWrites, { type: "began", nth: 1, place: horn, change: change("no") });
    expect(withWrites("r", inConflict, typing).get(horn)?.state).toBe("conflict");
  });

  test("what could not be kept is shown as it was typed, and a later write that was kept makes up for it", () => {
    const failed = writesAfter(noWrites, { type: "failed", nth: 1, place: horn, change: change("no") });
    const seen = withWrites("r", new Map([[horn, kept("saved")]]), failed).get(horn);
    expect(seen).toMatchObject({ state: "lost", base: 1, finding: { answer: { value: "no" } } });
    expect(writesAfter(failed, { type: "kept", nth: 2, place: horn }).lost.size).toBe(0);
  });

  test("an earlier write that ends late neither hides nor brings back what a later one said", () => {
    const failed = writesAfter(noWrites, { type: "failed", nth: 2, place: horn, change: change("no") });
    expect(writesAfter(failed, { type: "kept", nth: 1, place: horn }).lost.size).toBe(1);
  });
});

test.each([
  [{}, "saved"],
  [{ waiting: 1 }, "kept-here"],
  [{ waiting: 1, connection: "sending" }, "sending"],
  [{ waiting: 1, connection: "unreachable" }, "offline"],
  [{ keeping: 1, waiting: 1 }, "keeping"],
  [{ lost: 1, keeping: 1, waiting: 1 }, "not-kept"],
  [{ conflicts: 1 }, "rest-saved"],
  [{ refused: 1 }, "rest-saved"],
  [{ unread: 1 }, "rest-saved"],
] as const)("%j is said as %s", (more, word) => {
  expect(saveWord({ ...quiet, ...more })).toBe(word);
});

describe("the seal", () => {
  test("is open where all has arrived and something is answered", () => {
    expect(sealBlocks(quiet, 1)).toEqual([]);
  });

  test.each(["keeping", "lost", "waiting", "conflicts", "refused", "unread"] as const)(
    "is kept by %s",
    (what) => {
      expect(sealBlocks({ ...quiet, [what]: 1 }, 1)).toEqual([what]);
    },
  );

  test("is kept by an empty sheet", () => {
    expect(sealBlocks(quiet, 0)).toEqual(["nothing-answered"]);
  });
});

test("what stands is counted from what was kept", () => {
  const findings = new Map(
    [
      kept("waiting"),
      kept("conflict"),
      kept("refused"),
      kept("saved", { unread: { texts: { "reading.0": "abc" } } }),
    ].map((one, at) => [`${at}`, one]),
  );
  expect(standingOf(findings, noWrites, "reached")).toEqual({
    ...quiet,
    waiting: 1,
    conflicts: 1,
    refused: 1,
    unread: 1,
  });
});

describe("several writes at once", () => {
  const lamp = "electrics.lamps@left-stop";
  const began = [
    { type: "began", nth: 2, place: horn, change: change("yes") } as const,
    { type: "began", nth: 1, place: lamp, change: change("no") } as const,
  ].reduce(writesAfter, noWrites);

  test("are each under way until it ends itself", () => {
    expect([began.begun, began.underWay.size]).toEqual([2, 2]);
    const one = writesAfter(began, { type: "kept", nth: 1, place: lamp });
    expect([...one.underWay.keys()]).toEqual([2]);
    const failed = writesAfter(one, { type: "failed", nth: 2, place: horn, change: change("yes") });
    expect([[...failed.underWay.keys()], [...failed.lost.keys()]]).toEqual([[], [horn]]);
  });

  test("are seen as waiting, and as lost where what stood there was", () => {
    const seen = withWrites("r", new Map(), began);
    expect([seen.get(horn)?.state, seen.get(lamp)?.state]).toEqual(["waiting", "waiting"]);
    const lost = writesAfter(began, { type: "failed", nth: 1, place: lamp, change: change("no") });
    const again = writesAfter(lost, { type: "began", nth: 3, place: lamp, change: change("yes") });
    const shown = withWrites("r", new Map(), again);
    expect(shown.get(lamp)).toMatchObject({ state: "lost", finding: { answer: { value: "yes" } } });
    expect(standingOf(shown, again, "reached", 2)).toMatchObject({ lost: 1, waiting: 3, keeping: 2 });
  });

  test("what was not kept at last hides nothing of what was", () => {
    const findings = new Map([[horn, kept("saved")]]);
    expect(withWrites("r", findings, noWrites)).toBe(findings);
  });
});
