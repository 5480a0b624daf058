import { describe, expect, test } from "vitest";
import { filledIn, unsendable, blankSheet, readKept } from "./carried-sheet";
import { keptKey, sheetKeeper, type TextStore } from "./sheet-keeper";

const now = "2027-05-04T14:00:00Z";
const later = "2027-05-04T18:00:00Z";
const of = { handOver: "0197a1b2-0000-7000-8000-000000000001", stage: "collection" } as const;
const delivery = { ...of, stage: "delivery" } as const;
const dent = {
  kind: "faults" as const,
  found: [{ kind: "dent", extent: { value: 80, unit: "mm" as const } }],
  denied: [],
};

const device = (): TextStore & { readonly texts: Map<string, string> } => {
  const texts = new Map<string, string>();
  return {
    texts,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, text) => void texts.set(key, text),
    removeItem: (key) => void texts.delete(key),
  };
};

const filled = (store: TextStore) => {
  const keeper = sheetKeeper(store, of, now);
  keeper.enter({ act: "place", place: "Dock 4" });
  keeper.enter({ act: "say", key: "body.faults hood", answer: dent, unread: undefined });
  keeper.enter({ act: "note", key: "body.faults hood", note: "under the badge" });
  keeper.enter({
    act: "say",
    key: "identity.odometer ",
    answer: null,
    unread: { texts: { "reading.0": "61 2x" } },
  });
  return keeper;
};

describe("what is filled in on the carrier's page", () => {
  test("is kept as it is typed, and is there again when the page is opened anew", () => {
    const store = device();
    const before = filled(store).get();
    expect(before.kept).toBe("kept");
    const after = sheetKeeper(store, of, later).get();
    expect(after).toEqual({ sheet: before.sheet, kept: "kept", found: "restored" });
    expect(after.sheet).toMatchObject({ started: now, place: "Dock 4" });
  });

  test("is not called kept before anything is typed, nor once all of it was taken back", () => {
    const store = device();
    const keeper = sheetKeeper(store, of, now);
    expect(keeper.get().kept).toBe("nothing");
    keeper.enter({ act: "place", place: "D" });
    keeper.enter({ act: "place", place: "" });
    expect([keeper.get().kept, store.texts.size]).toEqual(["nothing", 0]);
  });

  test("is not called kept where the device is full, and stays on the page", () => {
    const full = {
      ...device(),
      setItem: () => {
        throw new DOMException("full", "QuotaExceededError");
      },
    };
    const { kept, sheet } = filled(full).get();
    expect([kept, sheet.place]).toEqual(["not-kept", "Dock 4"]);
    expect(sheetKeeper(null, of, now).get().kept).toBe("not-kept");
  });

  test("is taken away once signed, with what was left of the stage before", () => {
    const store = device();
    filled(store);
    const keeper = sheetKeeper(store, delivery, later);
    keeper.enter({ act: "place", place: "Gate" });
    expect(store.texts.size).toBe(2);
    keeper.clear();
    expect(store.texts.size).toBe(0);
  });

  test("of the collection is never taken for the delivery, and it says so", () => {
    const store = device();
    filled(store);
    expect(sheetKeeper(store, delivery, later).get()).toEqual({
      sheet: blankSheet(later),
      kept: "nothing",
      found: "other-stage",
    });
    store.setItem(keptKey(delivery), store.getItem(keptKey(of)) ?? "");
    expect(sheetKeeper(store, delivery, later).get().found).toBe("other-stage");
  });

  test.each(["{", "[]", '{"format":"evenhand-carried-sheet","version":2}', '"text"'])(
    "is left out where it cannot be read, and it says so: %s",
    (text) => {
      const store = device();
      store.setItem(keptKey(of), text);
      expect(sheetKeeper(store, of, now).get()).toMatchObject({ found: "unreadable", sheet: { said: {} } });
      expect(readKept(text, "collection")).toEqual({ kind: "unreadable" });
    },
  );
});

test("a figure that cannot be read and a note without an answer are named, and are not left out in silence", () => {
  const sheet = filled(device()).get().sheet;
  expect(unsendable(sheet)).toEqual(["identity.odometer "]);
  const noted = filledIn(sheet, { act: "note", key: "road.leaks ", note: "drip" });
  expect(unsendable(noted)).toEqual(["identity.odometer ", "road.leaks "]);
});
