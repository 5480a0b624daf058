import { decideMove, type StateTable } from "@evenhand/case/state-table";
import type { Operation, OperationResult } from "@evenhand/shared/http/reports";
import type { Change, KeptFinding, KeptOperation } from "./store";

/**
 * How one place of a sheet stands between this device and the service: nothing of it here; kept here and not sent; on its way;
 * on its way with something newer kept behind; arrived; changed on another device too; refused.
 */
export type PlaceState = "nothing" | "kept" | "sending" | "overtaken" | "saved" | "conflict" | "refused";

export type PlaceMove =
  | "keep"
  | "take-mine"
  | "take-theirs"
  | "take-nothing"
  | "send"
  | "let-go"
  | "rest"
  | "apply"
  | "take-back"
  | "refuse"
  | "contradict"
  | "bring"
  | "bring-unreadable"
  | "bring-nothing";

export type PlaceActor = "person" | "device" | "service";

const settledHere: readonly PlaceState[] = ["nothing", "saved", "refused"];

/** Everything that can happen to what is kept of a place. What is in no row leaves it as it is. */
export const PLACE_STATES: StateTable<PlaceState, PlaceMove, PlaceActor> = {
  states: ["nothing", "kept", "sending", "overtaken", "saved", "conflict", "refused"],
  moves: [
    "keep",
    "take-mine",
    "take-theirs",
    "take-nothing",
    "send",
    "let-go",
    "rest",
    "apply",
    "take-back",
    "refuse",
    "contradict",
    "bring",
    "bring-unreadable",
    "bring-nothing",
  ],
  actors: ["person", "device", "service"],
  first: ["nothing"],
  rows: [
    { move: "keep", from: ["nothing", "saved", "refused", "kept"], to: "kept", actors: ["person"] },
    { move: "keep", from: ["sending", "overtaken"], to: "overtaken", actors: ["person"] },
    // Typing on decides nothing: both still stand.
    { move: "keep", from: ["conflict"], to: "conflict", actors: ["person"] },
    { move: "take-mine", from: ["conflict"], to: "kept", actors: ["person"] },
    { move: "take-theirs", from: ["conflict"], to: "saved", actors: ["person"] },
    { move: "take-nothing", from: ["conflict"], to: "nothing", actors: ["person"] },
    { move: "send", from: ["kept", "sending"], to: "sending", actors: ["device"] },
    { move: "send", from: ["overtaken"], to: "overtaken", actors: ["device"] },
    // Nothing to take back where the service never had it; what cannot be read rests here.
    { move: "let-go", from: ["kept"], to: "nothing", actors: ["device"] },
    { move: "rest", from: ["kept"], to: "saved", actors: ["device"] },
    { move: "apply", from: ["sending"], to: "saved", actors: ["service"] },
    { move: "apply", from: ["overtaken"], to: "kept", actors: ["service"] },
    { move: "take-back", from: ["sending"], to: "nothing", actors: ["service"] },
    { move: "take-back", from: ["overtaken"], to: "kept", actors: ["service"] },
    { move: "refuse", from: ["sending"], to: "refused", actors: ["service"] },
    { move: "refuse", from: ["overtaken"], to: "kept", actors: ["service"] },
    { move: "contradict", from: ["sending", "overtaken"], to: "conflict", actors: ["service"] },
    { move: "bring", from: settledHere, to: "saved", actors: ["service"] },
    { move: "bring-unreadable", from: settledHere, to: "refused", actors: ["service"] },
    { move: "bring-nothing", from: settledHere, to: "nothing", actors: ["service"] },
  ],
};

/** All that this device has of one place: what is kept of it, and its changes not known to have arrived, the oldest first. */
export interface PlaceHere {
  readonly kept: KeptFinding | undefined;
  readonly queue: readonly KeptOperation[];
}

export type PlaceEvent =
  /** `id`: for the change that is queued, where one is. */
  | {
      readonly type: "keep";
      readonly report: string;
      readonly place: string;
      readonly id: string;
      readonly change: Change;
    }
  | { readonly type: "settle"; readonly id: string; readonly which: "mine" | "theirs" }
  | { readonly type: "send" }
  | { readonly type: "answer"; readonly id: string; readonly result: OperationResult }
  /** What the service holds of the place; nothing: none. */
  | { readonly type: "bring"; readonly held: KeptFinding | undefined };

const isUnsent = ({ sent }: KeptOperation): boolean => sent === undefined;

/** The state of what is kept of a place. */
export const placeStateOf = ({ kept, queue }: PlaceHere): PlaceState => {
  if (kept?.state === "conflict") return "conflict";
  if (queue.length > 0) {
    if (queue.every(isUnsent)) return "kept";
    return queue.some(isUnsent) ? "overtaken" : "sending";
  }
  if (kept === undefined) return "nothing";
  return kept.state === "refused" || kept.state === "saved" ? kept.state : "kept";
};

const operationOf = (id: string, kept: KeptFinding): Operation | null => {
  const at = kept.place.indexOf("@");
  if (kept.finding) return { id, op: "set", finding: kept.finding, base: kept.base };
  if (kept.base === null) return null;
  return {
    id,
    op: "remove",
    item: kept.place.slice(0, at),
    position: kept.place.slice(at + 1),
    base: kept.base,
  };
};

/** What a place may come to, by the table's move that leads there. */
interface Outcome {
  readonly move: PlaceMove;
  readonly actor: PlaceActor;
  readonly after: PlaceHere;
}

const onKeep = (
  { kept, queue }: PlaceHere,
  { report, place, id, change }: Extract<PlaceEvent, { type: "keep" }>,
): Outcome => {
  const { finding, unread } = change;
  const next = { report, place, finding, unread, base: kept?.base ?? null };
  if (kept?.state === "conflict") {
    const both: KeptFinding = { ...next, state: "conflict", theirs: kept.theirs };
    return { move: "keep", actor: "person", after: { kept: both, queue } };
  }
  const line = queue.some(isUnsent) ? queue : [...queue, { id, report, place }];
  return { move: "keep", actor: "person", after: { kept: { ...next, state: "waiting" }, queue: line } };
};

const onSettle = (
  { kept, queue }: PlaceHere,
  { id, which }: Extract<PlaceEvent, { type: "settle" }>,
): Outcome | null => {
  if (kept === undefined) return null;
  const { report, place, base, finding, unread, theirs = null } = kept;
  const actor = "person";
  if (which === "mine") {
    const mine: KeptFinding = { report, place, base, finding, unread, state: "waiting" };
    return { move: "take-mine", actor, after: { kept: mine, queue: [...queue, { id, report, place }] } };
  }
  if (theirs === null) return { move: "take-nothing", actor, after: { kept: undefined, queue } };
  const saved: KeptFinding = { report, place, base, finding: theirs, state: "saved" };
  return { move: "take-theirs", actor, after: { kept: saved, queue } };
};

/** The oldest change goes, fixed from now on. */
const onSend = ({ kept, queue }: PlaceHere): Outcome | null => {
  const [first, ...behind] = queue;
  if (first === undefined) return null;
  const actor = "device";
  const sent = first.sent ?? (kept === undefined ? null : operationOf(first.id, kept));
  if (sent !== null) return { move: "send", actor, after: { kept, queue: [{ ...first, sent }, ...behind] } };
  if (kept?.unread === undefined) return { move: "let-go", actor, after: { kept: undefined, queue: behind } };
  return { move: "rest", actor, after: { kept: { ...kept, state: "saved" }, queue: behind } };
};

/** Taken back here and there: two devices that say the same contradict each other in nothing. */
const isTakenBackOnBoth = (
  kept: KeptFinding,
  sent: Operation | undefined,
  result: OperationResult,
): boolean =>
  result.result === "conflict" && result.current === null && (kept.finding === null || sent?.op === "remove");

const onApplied = (kept: KeptFinding, behind: readonly KeptOperation[], revision: number): Outcome => {
  const actor = "service";
  const more = behind.length > 0;
  if (!more && kept.finding === null && kept.unread === undefined)
    return { move: "take-back", actor, after: { kept: undefined, queue: behind } };
  const { theirs: _theirs, problems: _problems, ...rest } = kept;
  const next: KeptFinding = { ...rest, base: revision, state: more ? "waiting" : "saved" };
  return { move: "apply", actor, after: { kept: next, queue: behind } };
};

/** An answer to a change that no longer stands in line (another page of this device took it) is no news. */
const onAnswer = (
  { kept, queue }: PlaceHere,
  { id, result }: Extract<PlaceEvent, { type: "answer" }>,
): Outcome | null => {
  const asked = queue.find((one) => one.id === id);
  if (asked === undefined) return null;
  const actor = "service";
  const behind = queue.filter((one) => one !== asked);
  if (kept === undefined) return { move: "take-back", actor, after: { kept, queue: behind } };
  if (result.result === "refused") {
    const state = behind.length > 0 ? "waiting" : "refused";
    const refused: KeptFinding = { ...kept, state, problems: result.problems };
    return { move: "refuse", actor, after: { kept: refused, queue: behind } };
  }
  if (result.result !== "conflict" || isTakenBackOnBoth(kept, asked.sent, result))
    return onApplied(kept, behind, result.revision);
  const both: KeptFinding = { ...kept, base: result.revision, state: "conflict", theirs: result.current };
  return { move: "contradict", actor, after: { kept: both, queue: [] } };
};

/** Is something here to be looked at by the person first? */
const isHeldHere = ({ unread, state, finding }: KeptFinding): boolean =>
  unread !== undefined || (state === "refused" && finding !== null);

const onBring = (
  { kept, queue }: PlaceHere,
  { held }: Extract<PlaceEvent, { type: "bring" }>,
): Outcome | null => {
  if (kept !== undefined && isHeldHere(kept)) return null;
  const after = { kept: held, queue };
  if (held === undefined) return { move: "bring-nothing", actor: "service", after };
  return { move: held.state === "refused" ? "bring-unreadable" : "bring", actor: "service", after };
};

const outcomeOf = (here: PlaceHere, event: PlaceEvent): Outcome | null => {
  switch (event.type) {
    case "keep":
      return onKeep(here, event);
    case "settle":
      return onSettle(here, event);
    case "send":
      return onSend(here);
    case "answer":
      return onAnswer(here, event);
    case "bring":
      return onBring(here, event);
  }
};

/**
 * What this device has of a place after something happened. What the table has no row for leaves it as it was: so what is on its
 * way, or in conflict, is never written over by what the service is asked for meanwhile.
 *
 * @example decidePlace({ kept: undefined, queue: [] }, { type: "send" }) // the same: nothing waits
 */
export const decidePlace = (here: PlaceHere, event: PlaceEvent): PlaceHere => {
  const outcome = outcomeOf(here, event);
  if (outcome === null) return here;
  const { move, actor, after } = outcome;
  return decideMove(PLACE_STATES, placeStateOf(here), move, actor).kind === "moved" ? after : here;
};
