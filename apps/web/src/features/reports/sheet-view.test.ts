import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, test } from "vitest";
import { placesFor } from "../../entities/sheet/places.ts";
import { sheetIndex } from "../../entities/sheet/sheet-index.ts";
import { byItem, searchAfter, sheetPlaces, sheetView } from "./sheet-view.ts";

const index = sheetIndex(sheetVersion1);
const all = placesFor(index, {
  body: "coupe",
  doors: 2,
  cylinders: 8,
  construction: "unit-body",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "disc", rear: "drum" },
  leftHandDrive: true,
  frontPivots: "ball-joints",
});
const none = new Map<string, never>();
const answered = { finding: { item: "a", position: "", answer: { kind: "working", value: "yes" } } } as const;
const finding = { ...answered.finding, firmness: "asserted", basis: "seen" } as const;
const findingsAt = (...keys: readonly string[]) => new Map(keys.map((key) => [key, { finding }]));
const view = (more: Partial<Parameters<typeof sheetView>[0]> = {}) =>
  sheetView({
    sections: index.sheet.sections,
    places: sheetPlaces(all, "inspection", none),
    findings: none,
    search: {},
    answeredBefore: new Set(),
    ...more,
  });

describe("what is shown of a sheet", () => {
  test("an inspector is shown what an inspector is asked, and what stands answered besides", () => {
    const asked = sheetPlaces(all, "inspection", none);
    const claimed = all.find(({ key }) => !asked.some((one) => one.key === key));
    expect(claimed).toBeDefined();
    const key = claimed?.key ?? "";
    expect(sheetPlaces(all, "inspection", findingsAt(key)).map((one) => one.key)).toContain(key);
  });

  test("the first section where none is named or the named one is not there, with no way back", () => {
    const [first, second] = index.sheet.sections;
    for (const section of [undefined, "no-such"])
      expect(view({ search: { section } })).toMatchObject({
        current: { id: first?.id },
        before: undefined,
        after: { id: second?.id },
        isFirst: true,
      });
    const last = view({ search: { section: index.sheet.sections.at(-1)?.id } });
    expect(last).toMatchObject({ after: undefined, isFirst: false });
  });

  test("sections say how much of them is answered, of the lines chosen", () => {
    const key = view().here[0]?.key ?? "";
    const before = view().entries[0];
    expect(view({ findings: findingsAt(key) }).entries[0]).toEqual({ ...before, done: 1 });
    const core = view({ search: { items: "core" } });
    expect(core.entries.reduce((sum, one) => sum + one.all, 0)).toBe(
      sheetPlaces(all, "inspection", none).filter(({ item }) => item.core).length,
    );
    expect(core.here.every(({ item }) => item.core)).toBe(true);
  });

  test("of the open lines only what was answered before is left out: none vanishes under the finger", () => {
    const [one, two] = view().here;
    const here = view({
      search: { items: "open" },
      findings: findingsAt(one?.key ?? "", two?.key ?? ""),
      answeredBefore: new Set([one?.key ?? ""]),
    }).here.map(({ key }) => key);
    expect(here).not.toContain(one?.key);
    expect(here).toContain(two?.key);
  });

  test("each item stands once, with all its places", () => {
    const groups = byItem(all);
    expect(new Set(groups.map(({ item }) => item.id)).size).toBe(groups.length);
    expect(groups.flatMap(({ places }) => places).length).toBe(all.length);
  });
});

test("moves change the address, and no more of it than they say", () => {
  const shown = view();
  const [one, two] = shown.here;
  const at = (move: Parameters<typeof searchAfter>[1]) => searchAfter(shown, move);
  expect(at({ type: "section", section: "body" })).toEqual({ section: "body", open: undefined });
  expect(at({ type: "items", items: "core" })).toEqual({ items: "core" });
  expect(at({ type: "items", items: "all" })).toEqual({ items: undefined });
  expect(at({ type: "walk" })).toEqual({ view: "stages", section: undefined, open: undefined });
  expect(at({ type: "open", place: one?.key })).toEqual({ open: one?.key });
  expect(at({ type: "next", from: one?.key ?? "" })).toEqual({ open: two?.key });
  expect(at({ type: "next", from: shown.here.at(-1)?.key ?? "" })).toEqual({ open: undefined });
});
