import type { Answer } from "@evenhand/shared/answer";
import type { Instrument } from "@evenhand/shared/report";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, test } from "vitest";
import { fittingInstrument } from "./fitting-instrument.ts";
import {
  changeOf,
  editAfter,
  editAgainAfter,
  startEdit,
  type EditStep,
  type PlaceEdit,
} from "./place-edit.ts";

const itemOf = (id: string) => {
  const item = sheetVersion1.items.find((one) => one.id === id);
  if (!item) throw new Error(`no item ${id}`);
  return item;
};
const tread = itemOf("wheels.tread-depth");
const gauge: Instrument = {
  id: "tg",
  name: "Tread gauge, brass",
  resolution: { value: 0.5, unit: "1/32in" },
};
const pressure: Instrument = { id: "pg", name: "Oil pressure gauge", resolution: { value: 1, unit: "psi" } };
const reading: Answer = { kind: "reading", unit: "1/32in", values: [{ value: 8 }] };
const time = "2026-05-04T15:00:00Z";
const place = { item: tread, position: "left-front" };

const start = (instruments: readonly Instrument[] = [gauge, pressure]): PlaceEdit =>
  startEdit(tread, undefined, instruments, undefined);
const after = (edit: PlaceEdit, ...steps: EditStep[]): PlaceEdit => steps.reduce(editAfter, edit);

describe("the instrument of a reading", () => {
  test("is the visit's fitting one from the start, and goes with the typed reading", () => {
    const edit = after(start(), { type: "answer", answer: reading });
    expect(changeOf(place, edit, time).finding).toMatchObject({ instrument: "tg", basis: "measured" });
  });

  test("is the one the item's other places were read with, where it is still there", () => {
    const last = { instrument: "pg" };
    expect(startEdit(tread, undefined, [gauge, pressure], last).grounds.instrument).toBe("pg");
    expect(startEdit(tread, undefined, [gauge], last).grounds.instrument).toBe("tg");
  });

  test("is nobody's guess where two fit alike or none does", () => {
    const twin = { ...gauge, id: "tg-2" };
    expect(fittingInstrument(tread, [gauge, twin])).toBeUndefined();
    expect(fittingInstrument(tread, [pressure])).toBeUndefined();
    expect(start([pressure]).grounds).toMatchObject({ basis: "seen" });
  });

  test("is the one of the item's kind, whatever it is called", () => {
    const kept = { ...gauge, id: "kept", name: "Number four", kind: "tread depth gauge" };
    expect(fittingInstrument(tread, [gauge, kept])).toBe("kept");
    expect(fittingInstrument(tread, [{ ...kept, kind: "tire gauge" }, gauge])).toBe("tg");
    expect(fittingInstrument(tread, [kept, { ...kept, id: "twin" }])).toBeUndefined();
  });

  test("stays with the reading when its unit is changed, and leaves with an answer that measures nothing", () => {
    const inMm = after(start(), { type: "answer", answer: { ...reading, unit: "mm" } });
    expect(changeOf(place, inMm, time).finding).toMatchObject({
      instrument: "tg",
      answer: { unit: "mm" },
    });
    const unseen = after(inMm, { type: "answer", answer: { kind: "not-seen", reason: "covered" } });
    expect(changeOf(place, unseen, time).finding?.instrument).toBeUndefined();
  });
});

describe("what was said comes back", () => {
  const said = after(start(), { type: "answer", answer: reading });

  test("after it was cleared", () => {
    const cleared = after(said, { type: "clear" });
    expect(changeOf(place, cleared, time).finding).toBeNull();
    expect(changeOf(place, after(cleared, { type: "undo" }), time).finding?.answer).toEqual(reading);
  });

  test("after it was replaced by a reason for not having seen it", () => {
    const replaced = after(
      said,
      { type: "not-seen" },
      { type: "answer", answer: { kind: "not-seen", reason: "covered" } },
    );
    expect(after(replaced, { type: "undo" })).toMatchObject({ answer: reading, notSeen: false });
  });

  test("with the fault that was removed", () => {
    const dents: Answer = { kind: "faults", found: [{ kind: "dent" }, { kind: "scratch" }], denied: [] };
    const one: Answer = { kind: "faults", found: [{ kind: "dent" }], denied: [] };
    const removed = after(start(), { type: "answer", answer: dents }, { type: "answer", answer: one });
    expect(after(removed, { type: "undo" }).answer).toEqual(dents);
    const last = after(start(), { type: "answer", answer: one }, { type: "answer", answer: null });
    expect(after(last, { type: "undo" }).answer).toEqual(one);
  });

  test("with what was typed and could not be read", () => {
    const unread = { texts: { "reading.0": "abc" } };
    const edit = after(
      start(),
      { type: "answer", answer: null, unread },
      { type: "clear" },
      { type: "undo" },
    );
    expect(changeOf(place, edit, time).unread).toEqual(unread);
  });

  test("and nothing is changed by asking why it was not seen until a reason is chosen", () => {
    const asked = after(said, { type: "not-seen" });
    expect(changeOf(place, asked, time).finding?.answer).toEqual(reading);
    expect(after(asked, { type: "not-seen" })).toMatchObject({ answer: reading, notSeen: false });
  });
});

test("a condition that cannot be read stays beside the finding, and comes back at its own field", () => {
  const edit = after(
    start(),
    { type: "answer", answer: reading },
    { type: "condition", id: "height", text: "about so" },
  );
  const { finding, unread } = changeOf(place, edit, time);
  expect(unread).toEqual({ texts: { "condition.height": "about so" } });
  const again = startEdit(
    tread,
    { report: "r", place: "p", base: 1, state: "saved", finding, ...(unread ? { unread } : {}) },
    [],
    undefined,
  );
  expect(again.conditions).toEqual({ "condition.height": "about so" });
  expect(again.unread).toBeUndefined();
});

describe("a place that was named to be looked at again", () => {
  const first = { ...start(), answer: reading };
  const again: Answer = { kind: "reading", unit: "1/32in", values: [{ value: 7 }] };

  test("is looked at again by answering anew, or by saying that the answer stands", () => {
    const answered = editAgainAfter(first, { type: "answer", answer: again });
    expect(changeOf(place, answered, time).finding).toMatchObject({ answer: again, look: "second" });
    const stands = after(first, { type: "grounds", change: { look: "second" } });
    expect(changeOf(place, stands, time).finding).toMatchObject({ answer: reading, look: "second" });
  });

  test("is not by a note, nor by emptying a field; and other places are none", () => {
    const noted = editAgainAfter(first, { type: "grounds", change: { note: "Worn." } });
    const emptied = editAgainAfter(first, { type: "answer", answer: null });
    for (const { grounds } of [noted, emptied, after(first, { type: "answer", answer: again })])
      expect(grounds.look).toBeUndefined();
  });
});
