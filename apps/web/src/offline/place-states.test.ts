import type { Finding } from "@evenhand/shared/finding";
import type { OperationResult } from "@evenhand/shared/http/reports";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decideMove } from "@evenhand/case/state-table";
import {
  decidePlace,
  PLACE_STATES,
  placeStateOf,
  type PlaceActor,
  type PlaceEvent,
  type PlaceHere,
  type PlaceMove,
  type PlaceState,
} from "./place-states.ts";

/** What the table allows, written down apart from it. */
const allowed: readonly (readonly [PlaceMove, PlaceActor, Partial<Record<PlaceState, PlaceState>>])[] = [
  [
    "keep",
    "person",
    {
      nothing: "kept",
      kept: "kept",
      sending: "overtaken",
      overtaken: "overtaken",
      saved: "kept",
      conflict: "conflict",
      refused: "kept",
    },
  ],
  ["take-mine", "person", { conflict: "kept" }],
  ["take-theirs", "person", { conflict: "saved" }],
  ["take-nothing", "person", { conflict: "nothing" }],
  ["send", "device", { kept: "sending", sending: "sending", overtaken: "overtaken" }],
  ["let-go", "device", { kept: "nothing" }],
  ["rest", "device", { kept: "saved" }],
  ["apply", "service", { sending: "saved", overtaken: "kept" }],
  ["take-back", "service", { sending: "nothing", overtaken: "kept" }],
  ["refuse", "service", { sending: "refused", overtaken: "kept" }],
  ["contradict", "service", { sending: "conflict", overtaken: "conflict" }],
  ["bring", "service", { nothing: "saved", saved: "saved", refused: "saved" }],
  ["bring-unreadable", "service", { nothing: "refused", saved: "refused", refused: "refused" }],
  ["bring-nothing", "service", { nothing: "nothing", saved: "nothing", refused: "nothing" }],
];

test("every state, move and actor: what is not written down here does not move", () => {
  for (const state of PLACE_STATES.states)
    for (const move of PLACE_STATES.moves)
      for (const actor of PLACE_STATES.actors) {
        const to = allowed.find(([one, who]) => one === move && who === actor)?.[2][state];
        const decided = decideMove(PLACE_STATES, state, move, actor);
        expect([state, move, actor, decided.kind === "moved" ? decided.to : undefined]).toEqual([
          state,
          move,
          actor,
          to,
        ]);
      }
});

const [report, place] = ["r", "electrics.horn@"];
const horn = (value: "yes" | "no"): Finding => ({
  item: "electrics.horn",
  position: "",
  answer: { kind: "working", value },
  firmness: "asserted",
  basis: "seen",
});
const nothing: PlaceHere = { kept: undefined, queue: [] };
const keep = (
  id: string,
  finding: Finding | null,
  unread?: { texts: Record<string, string> },
): PlaceEvent => ({
  type: "keep",
  report,
  place,
  id,
  change: { finding, unread },
});
const send: PlaceEvent = { type: "send" };
const answer = (result: OperationResult): PlaceEvent => ({ type: "answer", id: result.id, result });
const bring = (finding: Finding | null, base = 1): PlaceEvent => ({
  type: "bring",
  held: finding === null ? undefined : { report, place, finding, base, state: "saved" },
});
const after = (...events: readonly PlaceEvent[]): PlaceHere => events.reduce(decidePlace, nothing);
const stateAfter = (...events: readonly PlaceEvent[]): PlaceState => placeStateOf(after(...events));
const applied = (id: string, revision = 1) => answer({ id, result: "applied", revision });
const conflict = (id: string, current: Finding | null) =>
  answer({ id, result: "conflict", revision: 4, current });
const refused = (id: string) => answer({ id, result: "refused", problems: [] });

describe("an answer goes its way", () => {
  test("kept, sent, saved", () => {
    expect(stateAfter(keep("a", horn("yes")))).toBe("kept");
    expect(stateAfter(keep("a", horn("yes")), send)).toBe("sending");
    expect(after(keep("a", horn("yes")), send, applied("a"))).toEqual({
      kept: { report, place, finding: horn("yes"), unread: undefined, base: 1, state: "saved" },
      queue: [],
    });
  });

  test("a change of what is on its way queues behind it, and goes on top of what it became", () => {
    const typed = [keep("a", horn("yes")), send, keep("b", horn("no")), keep("c", null)];
    expect(stateAfter(...typed)).toBe("overtaken");
    expect(after(...typed).queue.map(({ id }) => id)).toEqual(["a", "b"]);
    expect(after(...typed, applied("a", 3), send).queue[0]?.sent).toMatchObject({ op: "remove", base: 3 });
  });

  test("what was sent does not change while it is sent again", () => {
    const once = after(keep("a", horn("yes")), send, keep("b", horn("no")));
    expect(decidePlace(once, send)).toEqual(once);
  });

  test("what the service never had is not taken back there", () => {
    expect(after(keep("a", horn("yes")), keep("b", null), send)).toEqual(nothing);
    const unread = { texts: { "reading.0": "abc" } };
    expect(stateAfter(keep("a", null, unread), send)).toBe("saved");
  });

  test("refused, it stays to be mended", () => {
    expect(stateAfter(keep("a", horn("yes")), send, refused("a"))).toBe("refused");
  });
});

describe("two devices", () => {
  const contradicted = [keep("a", horn("yes")), send, conflict("a", horn("no"))];

  test("contradict each other: both stand until the person says which", () => {
    expect(stateAfter(...contradicted)).toBe("conflict");
    expect(stateAfter(...contradicted, keep("b", horn("yes")), send, bring(horn("no")))).toBe("conflict");
    expect(stateAfter(...contradicted, { type: "settle", id: "b", which: "mine" })).toBe("kept");
    expect(after(...contradicted, { type: "settle", id: "b", which: "theirs" }).kept).toMatchObject({
      finding: horn("no"),
      state: "saved",
      base: 4,
    });
  });

  test("that both took it back do not contradict each other", () => {
    expect(after(bring(horn("yes")), keep("a", null), send, conflict("a", null))).toEqual(nothing);
    // Changed on its way, and taken back since: there is nothing there any more either.
    const late = [bring(horn("yes")), keep("a", horn("no")), send, keep("b", null), conflict("a", null)];
    expect(stateAfter(...late)).toBe("kept");
    expect(after(...late, send, conflict("b", null))).toEqual(nothing);
  });

  test("that both took it back, one saying something new since: it goes on top", () => {
    const anew = [bring(horn("yes")), keep("a", null), send, keep("b", horn("no")), conflict("a", null)];
    expect(after(...anew, send).queue[0]?.sent).toMatchObject({ op: "set", base: 4, finding: horn("no") });
  });

  test("one that changed what the other took back contradict each other", () => {
    expect(stateAfter(bring(horn("yes")), keep("a", horn("no")), send, conflict("a", null))).toBe("conflict");
    expect(stateAfter(bring(horn("yes")), keep("a", null), send, conflict("a", horn("no")))).toBe("conflict");
  });
});

test("an answer that another page of this device took already is no news", () => {
  const saved = after(
    keep("a", horn("yes")),
    send,
    applied("a"),
    keep("b", horn("no")),
    send,
    applied("b", 2),
  );
  expect(decidePlace(saved, answer({ id: "a", result: "duplicate", revision: 1 }))).toBe(saved);
  expect(decidePlace(saved, conflict("a", null))).toBe(saved);
});

test("what has not arrived is not written over by what the service holds", () => {
  for (const held of [[keep("a", horn("yes"))], [keep("a", horn("yes")), send]])
    expect(decidePlace(after(...held), bring(horn("no")))).toEqual(after(...held));
});

const value = fc.constantFrom(horn("yes"), horn("no"), null);
const event: fc.Arbitrary<PlaceEvent> = fc.oneof(
  fc.record({ id: fc.uuid(), finding: value }).map(({ id, finding }) => keep(id, finding)),
  fc.constant(send),
  fc.record({ id: fc.uuid(), which: fc.constantFrom("mine" as const, "theirs" as const) }).map((one) => ({
    type: "settle" as const,
    ...one,
  })),
  value.map((finding) => bring(finding)),
  fc.constantFrom(applied, refused).map((one) => one("a")),
  value.map((current) => conflict("a", current)),
);

/** An answer is to the change that was sent, whichever that is. */
const meant = (here: PlaceHere, one: PlaceEvent): PlaceEvent => {
  const sent = here.queue.find((queued) => queued.sent !== undefined);
  return one.type === "answer" && sent !== undefined
    ? { ...one, id: sent.id, result: { ...one.result, id: sent.id } }
    : one;
};

test("whatever happens, a place only ever goes where the table leads", () => {
  fc.assert(
    fc.property(fc.array(event, { maxLength: 20 }), (events) => {
      let here = nothing;
      for (const one of events) {
        const next = decidePlace(here, meant(here, one));
        const [from, to] = [placeStateOf(here), placeStateOf(next)];
        const leads = PLACE_STATES.rows.some((row) => row.from.includes(from) && row.to === to);
        expect(next === here || leads).toBe(true);
        expect(next.queue.filter(({ sent }) => sent === undefined).length).toBeLessThanOrEqual(1);
        here = next;
      }
    }),
  );
});
