import { describe, expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { finding, form, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compareByPlace } from "../compare/index.ts";
import { coverageCounter, lookOver } from "./index.ts";

const works = (item: string, value: "yes" | "no" | "not-known" = "yes") =>
  finding(item, { kind: "working", value });
const unseen = (item: string) => finding(item, { kind: "not-seen", reason: "no-time" });
const HORN = "electrics.horn";
const RADIO = "electrics.radio";
const lookedOver = (a: Finding[], b: Finding[]) => {
  const [first, second] = [statement(a), inspection(b)];
  const lines = compareByPlace(first, second, sheet);
  const places: {
    item: string;
    entry: number;
    stated: boolean;
    seen: boolean;
    seenSoundNotStated: boolean;
  }[] = [];
  const counter = coverageCounter(sheet);
  lookOver(lines, lines.entries, first, second, (place) => {
    counter.count(place);
    const { entry, stated, seen, seenSoundNotStated } = place;
    places.push({ item: place.place.item, entry, stated, seen, seenSoundNotStated });
  });
  return { places, coverage: counter.coverage() };
};
const coverage = (a: Finding[], b: Finding[]) => lookedOver(a, b).coverage;
const horn = (a: Finding[], b: Finding[]) => lookedOver(a, b).places.find(({ item }) => item === HORN);

describe("lookOver", () => {
  it("has every place once, however many entries it has", () => {
    const faults = finding("trunk.floor", {
      kind: "faults",
      found: [{ kind: "dent" }],
      denied: ["corrosion"],
    });
    const { places } = lookedOver([faults], [faults]);
    expect(new Set(places.map(({ entry }) => entry)).size).toBe(places.length);
    expect(places).toHaveLength(
      applicablePlaces(sheet.sheet, form).filter(
        ({ item }) => item.circumstance !== true && item.asked !== "statement",
      ).length,
    );
    expect(places.find(({ item }) => item === "trunk.floor")).toMatchObject({ stated: true, seen: true });
  });

  it("takes not seen and not known for neither stated nor seen", () => {
    expect(horn([unseen(HORN)], [works(HORN, "not-known")])).toMatchObject({ stated: false, seen: false });
    expect(horn([works(HORN)], [works(HORN, "no")])).toMatchObject({
      stated: true,
      seen: true,
      seenSoundNotStated: false,
    });
  });

  it("knows what was seen, sound and not stated", () => {
    expect(horn([], [works(HORN)])).toMatchObject({ seenSoundNotStated: true });
    expect(horn([unseen(HORN)], [works(HORN)])).toMatchObject({ seenSoundNotStated: true });
    expect(horn([], [works(HORN, "no")])).toMatchObject({ seenSoundNotStated: false, seen: true });
  });
});

describe("coverageCounter", () => {
  it("counts by section, by severity and over the whole", () => {
    const { bySection, bySeverity, whole } = coverage(
      [works(HORN), works(RADIO)],
      [works(HORN), works("electrics.clock")],
    );
    const row = { stated: 2, seen: 2, statedAndSeen: 1, seenSoundNotStated: 1 };
    expect(whole).toMatchObject({ of: "whole", ...row });
    expect(bySection.find(({ of }) => of === "electrics")).toMatchObject(row);
    expect(bySection.find(({ of }) => of === "trunk")).toMatchObject({ stated: 0, seen: 0 });
    expect(bySeverity.map(({ of }) => of)).toEqual(["halt", "danger", "worth", "repair", "small"]);
    const lamp = finding("electrics.lamps", { kind: "working", value: "yes" }, { position: "left-stop" });
    const danger = coverage([lamp, works(HORN)], [lamp]).bySeverity[1];
    expect(danger).toMatchObject({ stated: 1, seen: 1, statedAndSeen: 1, seenSoundNotStated: 0 });
  });

  it("adds up to the whole both ways, sections in sheet order, none without a place", () => {
    const { bySection, bySeverity, whole } = coverage([], []);
    const sum = (rows: typeof bySection) => rows.reduce((total, { onSheet }) => total + onSheet, 0);
    expect([sum(bySection), sum(bySeverity)]).toEqual([whole.onSheet, whole.onSheet]);
    expect(bySection.map(({ of }) => of)).toEqual(sheet.sheet.sections.map(({ id }) => id));
    expect(coverageCounter(sheet).coverage().bySection).toEqual([]);
  });
});
