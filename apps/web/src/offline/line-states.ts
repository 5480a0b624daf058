import { decideMove, type StateRow, type StateTable } from "@evenhand/case/state-table";
import type { Connection } from "./save-state";

/**
 * How the line between this device and the service stands: nothing waits; something does and goes in a moment; on its way; the
 * service cannot be reached; it refused all of it; the report is sealed, and takes nothing more.
 */
export type LineState = "idle" | "due" | "sending" | "waiting-for-signal" | "refused" | "sealed";

export type LineMove =
  "wait" | "empty" | "ring" | "signal" | "ask" | "arrive" | "lose-signal" | "refuse" | "seal" | "reopen";

export type LineActor = "person" | "device" | "service";

/** What is to be done on a move: send; try again after a while; not try again by itself. */
export type LineDeed = "send" | "ring-later" | "do-not-ring";

export interface LineRow extends StateRow<LineState, LineMove, LineActor> {
  readonly deed?: LineDeed;
}

const atRest: readonly LineState[] = ["idle", "due", "waiting-for-signal", "refused", "sealed"];

/** Everything that can happen to the line. What is in no row leaves it as it is. */
export const LINE_STATES: StateTable<LineState, LineMove, LineActor, LineRow> = {
  states: ["idle", "due", "sending", "waiting-for-signal", "refused", "sealed"],
  moves: ["wait", "empty", "ring", "signal", "ask", "arrive", "lose-signal", "refuse", "seal", "reopen"],
  actors: ["person", "device", "service"],
  first: ["idle"],
  rows: [
    { move: "wait", from: ["idle", "due"], to: "due", actors: ["device"], deed: "ring-later" },
    {
      move: "wait",
      from: ["waiting-for-signal"],
      to: "waiting-for-signal",
      actors: ["device"],
      deed: "ring-later",
    },
    { move: "wait", from: ["refused"], to: "refused", actors: ["device"], deed: "ring-later" },
    { move: "empty", from: ["idle", "due"], to: "idle", actors: ["device"], deed: "do-not-ring" },
    {
      move: "empty",
      from: ["waiting-for-signal"],
      to: "waiting-for-signal",
      actors: ["device"],
      deed: "do-not-ring",
    },
    { move: "empty", from: ["refused"], to: "refused", actors: ["device"], deed: "do-not-ring" },
    {
      move: "ring",
      from: ["due", "waiting-for-signal", "refused"],
      to: "sending",
      actors: ["device"],
      deed: "send",
    },
    { move: "signal", from: atRest, to: "sending", actors: ["device"], deed: "send" },
    { move: "ask", from: atRest, to: "sending", actors: ["person"], deed: "send" },
    { move: "arrive", from: ["sending"], to: "idle", actors: ["service"] },
    {
      move: "lose-signal",
      from: ["sending"],
      to: "waiting-for-signal",
      actors: ["device"],
      deed: "ring-later",
    },
    { move: "refuse", from: ["sending"], to: "refused", actors: ["service"], deed: "ring-later" },
    // Asking again would be refused again, until somebody begins a new version.
    { move: "seal", from: ["sending"], to: "sealed", actors: ["service"], deed: "do-not-ring" },
    { move: "reopen", from: ["sealed"], to: "idle", actors: ["service"] },
  ],
};

export interface Line {
  readonly state: LineState;
  /** How often in a row nothing arrived. */
  readonly tries: number;
  /** How many changes are kept here and wait. */
  readonly waiting: number;
  /** Why nothing arrived the last time. */
  readonly refusal: unknown;
}

export const lineAtRest: Line = { state: "idle", tries: 0, waiting: 0, refusal: null };

export type LineEvent =
  | { readonly type: "waiting"; readonly count: number }
  | { readonly type: "rang" }
  | { readonly type: "signal" }
  | { readonly type: "asked" }
  | { readonly type: "arrived" }
  | {
      readonly type: "failed";
      readonly why: "lose-signal" | "refuse" | "seal";
      readonly refusal: unknown;
    }
  /** The service gave the draft, and it is open. */
  | { readonly type: "open" };

export interface LineDecision {
  readonly line: Line;
  readonly deeds: readonly LineDeed[];
}

/** Milliseconds until the next try: what is typed in one go is sent in one go, and a line that is down is tried ever more seldom. */
export const pause = (tries: number): number => (tries === 0 ? 350 : Math.min(30_000, 1_000 * 2 ** tries));

const move = (line: Line, step: LineMove, actor: LineActor): LineDecision => {
  const decision = decideMove(LINE_STATES, line.state, step, actor);
  if (decision.kind === "refused") return { line, deeds: [] };
  const { deed } = decision.row;
  const idle = deed === undefined || (deed === "ring-later" && line.waiting === 0);
  return { line: { ...line, state: decision.to }, deeds: idle ? [] : [deed] };
};

/** Where something still waits once it is at rest, it is due. */
const onward = ({ line, deeds }: LineDecision): LineDecision => {
  if (line.state !== "idle" || line.waiting === 0) return { line, deeds };
  const next = move(line, "wait", "device");
  return { line: next.line, deeds: [...deeds, ...next.deeds] };
};

/**
 * Decides what becomes of the line, and what is to be done now.
 *
 * @example
 * decideLine(lineAtRest, { type: "waiting", count: 1 })
 * // { line: { state: "due", waiting: 1, … }, deeds: ["ring-later"] }
 */
export const decideLine = (line: Line, event: LineEvent): LineDecision => {
  switch (event.type) {
    case "waiting": {
      // The same number again: what is set to ring already rings.
      if (event.count === line.waiting) return { line, deeds: [] };
      return move({ ...line, waiting: event.count }, event.count > 0 ? "wait" : "empty", "device");
    }
    case "rang":
      return line.waiting > 0 ? move(line, "ring", "device") : { line, deeds: [] };
    case "signal":
      return move({ ...line, tries: 0 }, "signal", "device");
    case "asked":
      return move(line, "ask", "person");
    case "arrived":
      return onward(move({ ...line, tries: 0, refusal: null }, "arrive", "service"));
    case "failed": {
      const { why, refusal } = event;
      if (line.state !== "sending") return { line, deeds: [] };
      const failed = { ...line, tries: line.tries + 1, refusal };
      return move(failed, why, why === "lose-signal" ? "device" : "service");
    }
    case "open":
      return line.state === "sealed"
        ? onward(move({ ...line, tries: 0, refusal: null }, "reopen", "service"))
        : { line, deeds: [] };
  }
};

const connections = {
  idle: "reached",
  due: "reached",
  sending: "sending",
  "waiting-for-signal": "unreachable",
  refused: "refused",
  sealed: "refused",
} as const satisfies Record<LineState, Connection>;

/** How the last try to reach the service ended, for whoever says it. */
export const connectionOf = (state: LineState): Connection => connections[state];
