import type { KeptEntry } from "@evenhand/shared/chain";
import { assert, constantFrom, integer, nat, property, tuple } from "fast-check";
import { expect, test } from "vitest";
import { verifyChain } from "@evenhand/record/verify-chain";
import { chainOf, headOf, organization, sha256 } from "../../testing/chain.ts";

const runs = { numRuns: 1000 };
const longest = 6;
const said = Array.from({ length: longest }, (_, at) => 10 + at);
/** Records of two entries and more, and each of them made anew from some entry on: made once, since thousands of cases look at them. */
const chains = said.map((_, at) => chainOf(said.slice(0, at + 1)));
const made = new Map<string, readonly KeptEntry[]>();
function madeAnew(length: number, from: number): readonly KeptEntry[] {
  const key = `${length} ${from}`;
  const there =
    made.get(key) ?? chainOf(said.slice(0, length).map((one, at) => (at >= from ? one + 100 : one)));
  made.set(key, there);
  return there;
}
const someChain = integer({ min: 2, max: longest }).map((length) => chains[length - 1] ?? never());
const verify = (entries: readonly KeptEntry[], receipts: readonly { size: number; root: string }[] = []) =>
  verifyChain(organization, entries, receipts, sha256);

/** Where a text or number stands in an entry. */
const places = [
  (entry: KeptEntry, flip: (text: string) => string) => ({ ...entry, previous: flip(entry.previous) }),
  (entry: KeptEntry, flip: (text: string) => string) => ({ ...entry, at: flip(entry.at) }),
  (entry: KeptEntry, flip: (text: string) => string) => ({ ...entry, kind: flip(entry.kind) }),
  (entry: KeptEntry, flip: (text: string) => string) => ({ ...entry, subject: flip(entry.subject) }),
  (entry: KeptEntry, flip: (text: string) => string) => ({ ...entry, actor: flip(entry.actor ?? "") }),
  (entry: KeptEntry, flip: (text: string) => string) => ({ ...entry, name: flip(entry.name ?? "") }),
  (entry: KeptEntry, flip: (text: string) => string) => ({ ...entry, content: flip(entry.content) }),
  (entry: KeptEntry, flip: (text: string) => string) => ({ ...entry, hash: flip(entry.hash) }),
  (entry: KeptEntry, flip: (text: string) => string) => ({
    ...entry,
    organization: flip(entry.organization),
  }),
  (entry: KeptEntry, flip: (text: string) => string) => reopened(entry, "name", "salt", flip),
  (entry: KeptEntry, flip: (text: string) => string) => reopened(entry, "name", "text", flip),
  (entry: KeptEntry, flip: (text: string) => string) => reopened(entry, "content", "salt", flip),
  (entry: KeptEntry, flip: (text: string) => string) => reopened(entry, "content", "text", flip),
] as const;

function reopened(
  entry: KeptEntry,
  which: "name" | "content",
  part: "salt" | "text",
  flip: (text: string) => string,
): KeptEntry {
  const opening = entry.openings[which];
  if (opening === null) throw new Error("It is open.");
  return { ...entry, openings: { ...entry.openings, [which]: { ...opening, [part]: flip(opening[part]) } } };
}

/** One character becomes another: a hexadecimal digit another such digit, so that it may still be read. */
const flipAt = (at: number) => (text: string) => {
  const place = at % text.length;
  const old = text[place] ?? "";
  return text.slice(0, place) + (old === "0" ? "1" : "0") + text.slice(place + 1);
};

test("a record as it was written is whole, and without a receipt its end is not proved", () => {
  assert(
    property(someChain, (entries) => {
      expect(verify(entries)).toEqual({
        kind: "whole",
        size: entries.length,
        root: headOf(entries).root,
        provenTo: 0,
      });
      expect(verify(entries, [headOf(entries, 1), headOf(entries)])).toMatchObject({
        provenTo: entries.length,
      });
    }),
    runs,
  );
});

test("whichever character of whichever entry is changed, that entry is named", () => {
  assert(
    property(someChain, nat(), nat(), constantFrom(...places), (entries, which, at, change) => {
      const index = which % entries.length;
      const changed = entries.map((entry, place) => (place === index ? change(entry, flipAt(at)) : entry));
      expect(verify(changed)).toMatchObject({ kind: "broken", seq: index + 1, to: index + 1 });
    }),
    runs,
  );
});

test("of two that changed places, and where one was left out, the first that is not in its place is named", () => {
  assert(
    property(someChain, nat(), (entries, which) => {
      const index = which % (entries.length - 1);
      const [first, second] = [entries[index], entries[index + 1]];
      const swapped = entries.with(index, second ?? never()).with(index + 1, first ?? never());
      expect(verify(swapped)).toMatchObject({ kind: "broken", seq: index + 1, fault: "missing" });
      expect(verify(entries.toSpliced(index, 1))).toMatchObject({ kind: "broken", seq: index + 1 });
    }),
    runs,
  );
});

test("a cut end is whole by itself, and named against a receipt", () => {
  assert(
    property(someChain, nat(), (entries, which) => {
      const kept = entries.slice(0, which % entries.length);
      expect(verify(kept)).toMatchObject({ kind: "whole", provenTo: 0 });
      expect(verify(kept, [headOf(entries)])).toMatchObject({
        kind: "broken",
        fault: "cut-off",
        seq: kept.length + 1,
        to: entries.length,
      });
    }),
    runs,
  );
});

test("a record made anew from some entry on is named against receipts, between the last that holds and the first that does not", () => {
  assert(
    property(someChain, tuple(nat(), nat(), nat()), (entries, [from, before, after]) => {
      const index = from % entries.length;
      const anew = madeAnew(entries.length, index);
      expect(verify(anew)).toMatchObject({ kind: "whole", provenTo: 0 });
      const held = before % (index + 1);
      const lost = index + 1 + (after % (entries.length - index));
      expect(verify(anew, [headOf(entries, lost), headOf(entries, held)])).toEqual({
        kind: "broken",
        fault: "not-as-signed",
        seq: held + 1,
        to: lost,
        provenTo: held,
      });
    }),
    runs,
  );
});

test("what was erased leaves the record whole", () => {
  const entries = chainOf([1, 2, 3]).map((entry) => ({ ...entry, openings: { name: null, content: null } }));
  expect(verify(entries, [headOf(entries)])).toMatchObject({ kind: "whole", provenTo: 3 });
});

test("a record of another organization is none of this one", () => {
  const other = organization.replace(/1$/, "2");
  expect(verifyChain(other, chainOf([1, 2]), [], sha256)).toMatchObject({ kind: "broken", seq: 1 });
});

function never(): never {
  throw new Error("There are two.");
}
