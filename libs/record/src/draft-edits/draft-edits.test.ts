import type { OperationsRequest, StoredHeader } from "@evenhand/shared/http/reports";
import type { Vehicle } from "@evenhand/shared/report";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { wholeCar } from "../blindness/index.ts";
import { newHeader } from "../report-document/index.ts";
import { placeKey } from "../place/index.ts";
import { type Draft, editDraft, type StoredFinding } from "./index.ts";

type Operation = OperationsRequest["operations"][number];
type Value = "yes" | "no" | "intermittent";

const vehicle: Vehicle = {
  make: "Uthwick",
  model: "Alder",
  modelYear: 1958,
  identification: "A7K214883",
  form: {
    body: "sedan",
    doors: 4,
    cylinders: 6,
    construction: "body-on-frame",
    gearbox: "manual",
    driven: "rear",
    fuelSystem: "carburetor",
    systemVolts: 12,
    brakes: { front: "disc", rear: "drum" },
    leftHandDrive: true,
  },
};
const header: StoredHeader = newHeader({
  visit: { started: "2026-05-04T15:00:00Z", ended: "2026-05-04T18:40:00Z", zone: "America/Chicago" },
});
const now = new Date("2026-05-04T16:00:00Z");
const horn = { item: "electrics.horn", position: "" };

const draft = (more: Partial<Draft> = {}): Draft => ({
  report: { id: "the-report", header, vehicle },
  now,
  findings: new Map(),
  known: new Map(),
  shown: null,
  again: new Set(),
  hashOf: (text) => text,
  ...more,
});
const set = (id: string, value: Value, base: number | null, more: object = {}): Operation => ({
  id,
  op: "set",
  finding: { ...horn, answer: { kind: "working", value }, basis: "seen", ...more },
  base,
});
const remove = (id: string, base: number): Operation => ({ id, op: "remove", ...horn, base });

/** The draft as it stands after these. */
const after = (before: Draft, operations: readonly Operation[]): Draft => {
  const { done, changed } = editDraft(before, operations);
  const known = done.map(({ id, ...rest }) => [id, { report: before.report.id, ...rest }] as const);
  return {
    ...before,
    known: new Map([...before.known, ...known]),
    findings: new Map([...before.findings, ...changed.map((one) => [placeKey(one), one.stored] as const)]),
  };
};
const standing = ({ findings }: Draft): StoredFinding | undefined => findings.get(placeKey(horn));

describe("an operation", () => {
  test("is done on top of what its author saw, and leaves the draft it was given as it was", () => {
    const before = draft();
    const { results, done, changed } = editDraft(before, [set("a", "yes", null), set("b", "no", 1)]);
    expect(results).toMatchObject([
      { id: "a", result: "applied", revision: 1 },
      { id: "b", result: "applied", revision: 2 },
    ]);
    expect(done.map(({ id }) => id)).toEqual(["a", "b"]);
    expect(changed).toMatchObject([{ ...horn, stored: { revision: 2, firstCommittedAt: now } }]);
    expect(before.findings.size).toBe(0);
  });

  test("of somebody who has not seen what stands there is a conflict, with what stands there", () => {
    const there = after(draft(), [set("a", "yes", null)]);
    for (const late of [set("b", "no", null), set("b", "no", 2), remove("b", 4)]) {
      const { results, changed } = editDraft(there, [late]);
      expect(results).toMatchObject([{ id: "b", result: "conflict", revision: 1, current: horn }]);
      expect(changed).toEqual([]);
    }
  });

  test("that does not hold is refused by itself, and the others are done", () => {
    const bad = {
      ...set("a", "yes", null),
      finding: { ...horn, answer: { kind: "working", value: "often" } },
    };
    const { results } = editDraft(draft(), [bad, set("b", "no", null)]);
    expect(results.map(({ result }) => result)).toEqual(["refused", "applied"]);
  });

  test("is known by its id: the same again is done already, another under its id is refused", () => {
    const once = after(draft(), [set("a", "yes", null)]);
    const { results, done } = editDraft(once, [set("a", "yes", null), set("a", "no", 1)]);
    expect(results.map(({ result }) => result)).toEqual(["duplicate", "refused"]);
    expect(done).toEqual([]);
    const elsewhere = { ...once, report: { ...once.report, id: "another-report" } };
    expect(editDraft(elsewhere, [set("a", "yes", null)]).results[0]?.result).toBe("refused");
  });

  test("that takes a finding back leaves its number, and when it was first committed", () => {
    const gone = after(draft(), [set("a", "yes", null), remove("b", 1)]);
    expect(standing(gone)).toEqual({ revision: 2, body: null, firstCommittedAt: now });
    const later = { ...gone, now: new Date("2026-05-04T17:00:00Z") };
    expect(standing(after(later, [set("c", "no", null)]))).toMatchObject({
      revision: 3,
      firstCommittedAt: now,
    });
  });
});

const saidBlind = (shown: Draft["shown"], blind: boolean): boolean | undefined =>
  standing(after(draft({ shown }), [set("a", "yes", null, { blind })]))?.body?.blind;

test("whether a finding was blind is said by what was shown, never by who answers", () => {
  expect([saidBlind([], false), saidBlind([horn], true), saidBlind([wholeCar], true)]).toEqual([
    true,
    false,
    false,
  ]);
  expect(saidBlind(null, true)).toBeUndefined();
});

test("sent again in any pieces after a broken line, operations are done once, and each is answered as it was done", () => {
  const value = fc.constantFrom<Value>("yes", "no", "intermittent");
  fc.assert(
    fc.property(fc.array(value, { minLength: 1, maxLength: 8 }), fc.nat(), fc.nat(), (values, cut, again) => {
      const all = values.map((one, at) => set(`o${at}`, one, at === 0 ? null : at));
      const first = after(draft(), all.slice(0, cut % (all.length + 1)));
      const twice = after(after(first, all.slice(again % all.length > cut ? 0 : again % all.length)), all);
      expect(twice.known.size).toBe(all.length);
      expect(standing(twice)?.revision).toBe(all.length);
      expect(standing(twice)?.body?.answer).toEqual({ kind: "working", value: values.at(-1) });
    }),
    { numRuns: 1_000 },
  );
});

describe("a place that was named to be looked at again", () => {
  const again = new Set([placeKey(horn)]);
  const asked = (): Draft => ({ ...after(draft({ shown: [] }), [set("a", "no", null)]), again });
  const stands = (one: Draft) => one.findings.get(placeKey(horn))?.body;

  test("keeps the first answer beside the second, and the first is the blind one", () => {
    const before = after(asked(), [set("b", "yes", 1, { note: "Loud." })]);
    expect(stands(before)).toMatchObject({
      answer: { value: "yes" },
      look: "second",
      first: { answer: { kind: "working", value: "no" }, blind: true },
    });
    expect(stands(after(before, [set("c", "intermittent", 2)]))?.first?.answer).toEqual({
      kind: "working",
      value: "no",
    });
  });

  test("keeps it where the second look finds the same, and takes a note for none", () => {
    expect(stands(after(asked(), [set("b", "no", 1, { note: "Loud." })]))).not.toHaveProperty("look");
    expect(stands(after(asked(), [set("b", "no", 1, { look: "second" })]))).toMatchObject({
      look: "second",
      first: { answer: { value: "no" }, blind: true },
      blind: true,
    });
  });

  test("cannot be emptied: the first answer would be gone", () => {
    const { results, changed } = editDraft(asked(), [remove("b", 1)]);
    expect(results).toMatchObject([{ result: "refused" }]);
    expect(changed).toEqual([]);
  });

  test("and nobody says so of another place", () => {
    const first = { answer: { kind: "working", value: "yes" } };
    const claimed = after(draft({ shown: [] }), [set("a", "no", null, { look: "second", first })]);
    expect(stands(claimed)).not.toHaveProperty("look");
    expect(stands(claimed)).not.toHaveProperty("first");
  });
});
