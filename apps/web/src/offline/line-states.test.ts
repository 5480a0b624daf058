import { decideMove } from "@evenhand/case/state-table";
import { expect, test } from "vitest";
import {
  connectionOf,
  decideLine,
  LINE_STATES,
  lineAtRest,
  pause,
  type LineDecision,
  type LineDeed,
  type LineEvent,
  type LineMove,
  type LineState,
} from "./line-states.ts";

/** What the table allows, written down apart from it: from which state to which, and what is done then. */
const allowed: Record<LineMove, Partial<Record<LineState, readonly [LineState, LineDeed?]>>> = {
  wait: {
    idle: ["due", "ring-later"],
    due: ["due", "ring-later"],
    "waiting-for-signal": ["waiting-for-signal", "ring-later"],
    refused: ["refused", "ring-later"],
  },
  empty: {
    idle: ["idle", "do-not-ring"],
    due: ["idle", "do-not-ring"],
    "waiting-for-signal": ["waiting-for-signal", "do-not-ring"],
    refused: ["refused", "do-not-ring"],
  },
  ring: {
    due: ["sending", "send"],
    "waiting-for-signal": ["sending", "send"],
    refused: ["sending", "send"],
  },
  signal: {
    idle: ["sending", "send"],
    due: ["sending", "send"],
    "waiting-for-signal": ["sending", "send"],
    refused: ["sending", "send"],
    sealed: ["sending", "send"],
  },
  ask: {
    idle: ["sending", "send"],
    due: ["sending", "send"],
    "waiting-for-signal": ["sending", "send"],
    refused: ["sending", "send"],
    sealed: ["sending", "send"],
  },
  arrive: { sending: ["idle"] },
  "lose-signal": { sending: ["waiting-for-signal", "ring-later"] },
  refuse: { sending: ["refused", "ring-later"] },
  seal: { sending: ["sealed", "do-not-ring"] },
  reopen: { sealed: ["idle"] },
};

test("every state and move: what is not written down here does not move", () => {
  for (const state of LINE_STATES.states)
    for (const move of LINE_STATES.moves) {
      const made = LINE_STATES.actors.flatMap((actor) => {
        const decision = decideMove(LINE_STATES, state, move, actor);
        return decision.kind === "moved" ? [[decision.to, decision.row.deed]] : [];
      });
      const row = allowed[move][state];
      expect([state, move, made]).toEqual([state, move, row === undefined ? [] : [[row[0], row[1]]]]);
    }
});

const waits: LineEvent = { type: "waiting", count: 1 };
const rang: LineEvent = { type: "rang" };
const failed = (why: "lose-signal" | "refuse" | "seal"): LineEvent => ({ type: "failed", why, refusal: why });

/** The line after these, and what was to be done at the last of them. */
const after = (...events: readonly LineEvent[]) =>
  events.reduce<LineDecision>(({ line }, event) => decideLine(line, event), { line: lineAtRest, deeds: [] });

test("what waits goes in a moment, and once it has arrived nothing is to be done", () => {
  expect(after(waits)).toMatchObject({ line: { state: "due" }, deeds: ["ring-later"] });
  expect(after(waits, rang)).toMatchObject({ line: { state: "sending" }, deeds: ["send"] });
  expect(after(waits, rang, { type: "waiting", count: 0 }, { type: "arrived" })).toEqual({
    line: lineAtRest,
    deeds: [],
  });
});

test("what is said while something is on its way goes after it", () => {
  const more = after(waits, rang, { type: "waiting", count: 2 }, { type: "arrived" });
  expect(more).toMatchObject({ line: { state: "due", tries: 0 }, deeds: ["ring-later"] });
});

test("with no signal it is tried ever more seldom, and at once when the signal returns", () => {
  const lost = after(waits, rang, failed("lose-signal"));
  expect(lost).toMatchObject({ line: { state: "waiting-for-signal", tries: 1 }, deeds: ["ring-later"] });
  const again = after(waits, rang, failed("lose-signal"), rang, failed("lose-signal"));
  expect(again.line.tries).toBe(2);
  expect([0, 1, 2, 4, 9].map(pause)).toEqual([350, 2_000, 4_000, 16_000, 30_000]);
  expect(decideLine(again.line, { type: "signal" })).toMatchObject({
    line: { state: "sending", tries: 0 },
    deeds: ["send"],
  });
});

test("the person can ask to try now, not twice at a time", () => {
  const lost = after(waits, rang, failed("lose-signal"));
  const asked = decideLine(lost.line, { type: "asked" });
  expect(asked).toMatchObject({ line: { state: "sending" }, deeds: ["send"] });
  expect(decideLine(asked.line, { type: "asked" }).deeds).toEqual([]);
  expect(decideLine(asked.line, { type: "signal" }).deeds).toEqual([]);
});

test("where nothing waits any more nothing rings", () => {
  const lost = after(waits, rang, failed("lose-signal"), { type: "waiting", count: 0 });
  expect(lost.deeds).toEqual(["do-not-ring"]);
  expect(decideLine(lost.line, rang).deeds).toEqual([]);
});

test("a refusal is kept until something has arrived", () => {
  expect(after(waits, rang, failed("refuse")).line).toMatchObject({ state: "refused", refusal: "refuse" });
  expect(after(waits, rang, failed("refuse"), rang, { type: "arrived" }).line.refusal).toBeNull();
});

test("a sealed report is not asked again by itself, whatever is said on, until it is open again", () => {
  const sealed = after(waits, rang, failed("seal"), { type: "waiting", count: 2 }, rang);
  expect(sealed).toMatchObject({ line: { state: "sealed", waiting: 2 }, deeds: [] });
  expect(connectionOf(sealed.line.state)).toBe("refused");
  expect(decideLine(sealed.line, { type: "open" })).toMatchObject({
    line: { state: "due", refusal: null },
    deeds: ["ring-later"],
  });
});

test("an end of what never began changes nothing", () => {
  expect(after(failed("refuse"))).toEqual({ line: lineAtRest, deeds: [] });
  expect(after({ type: "arrived" }).line.state).toBe("idle");
});
