import type { Finding } from "@evenhand/shared/finding";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { noWrites, standingOf } from "../../offline/save-state.ts";
import type { KeptFinding } from "../../offline/store.ts";
import { placeKey, type Place } from "../../entities/sheet/places.ts";
import { faultyPlaces, sealView } from "./seal-view.ts";

const places: readonly Place[] = sheetVersion1.items.slice(0, 40).map((item) => ({
  key: placeKey(item.id, ""),
  item,
  position: "",
  words: "",
}));
const finding: Finding = {
  item: "a",
  position: "",
  answer: { kind: "working", value: "yes" },
  firmness: "asserted",
  basis: "seen",
};
const kept = (at: number, more: Partial<KeptFinding> = {}): [string, KeptFinding] => {
  const place = places[at]?.key ?? "";
  return [place, { report: "r", place, finding, base: 1, state: "saved", ...more }];
};
const viewOf = (rows: readonly [string, KeptFinding][], allAsked = false) => {
  const findings = new Map(rows);
  return sealView(places, findings, standingOf(findings, noWrites, "reached"), allAsked);
};

test("what is left to the person is named, place by place, and keeps the seal", () => {
  const view = viewOf([
    kept(0),
    kept(1, { state: "conflict" }),
    kept(2, { state: "refused" }),
    kept(3, { finding: null, unread: { texts: { "reading.0": "abc" } } }),
    kept(4, { state: "lost" }),
  ]);
  expect(view.held.map(({ what, places: at }) => [what, at.map(({ key }) => key)])).toEqual([
    ["lost", [places[4]?.key]],
    ["conflicts", [places[1]?.key]],
    ["refused", [places[2]?.key]],
    ["unread", [places[3]?.key]],
  ]);
  expect(view).toMatchObject({ answered: 4, all: 40, blocks: ["lost", "conflicts", "refused", "unread"] });
});

test("open lines are those of every sheet, or all where all are asked; they keep nothing", () => {
  const core = places.filter(({ item }) => item.core).length;
  expect(viewOf([kept(0)]).open.length).toBe(core - (places[0]?.item.core === true ? 1 : 0));
  expect(viewOf([kept(0)], true)).toMatchObject({ blocks: [] });
  expect(viewOf([kept(0)], true).open.length).toBe(39);
});

test("the places a refusal names are shown, and no others", () => {
  const item = places[7]?.item.id;
  expect(faultyPlaces(places, [{ item }, {}, { item: "no-such" }])).toEqual([places[7]]);
});
