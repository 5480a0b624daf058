import { describe, expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { finding, form, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compareByPlace } from "../compare/index.ts";
import { coverageOf, isSeen, isSeenSoundNotStated, isStated, placesSeen } from "./index.ts";

const works = (item: string, value: "yes" | "no" | "not-known" = "yes") =>
  finding(item, { kind: "working", value });
const unseen = (item: string) => finding(item, { kind: "not-seen", reason: "no-time" });
const HORN = "electrics.horn";
const RADIO = "electrics.radio";
const seenOf = (a: Finding[], b: Finding[]) => {
  const [first, second] = [statement(a), inspection(b)];
  const lines = compareByPlace(first, second, sheet);
  return placesSeen(lines, lines.entries, first, second);
};
const coverage = (a: Finding[], b: Finding[]) => coverageOf(seenOf(a, b), sheet);
/** What is known of an item of the whole car. */
const knownOf = (item: string, a: Finding[], b: Finding[]) => {
  const seen = seenOf(a, b);
  const at = seen.places.findIndex(({ compiled }) => compiled.item.id === item);
  return {
    stated: isStated(seen, at),
    seen: isSeen(seen, at),
    seenSoundNotStated: isSeenSoundNotStated(seen, at),
  };
};
const horn = (a: Finding[], b: Finding[]) => knownOf(HORN, a, b);

describe("placesSeen", () => {
  it("has every place once, however many entries it has", () => {
    const faults = finding("trunk.floor", {
      kind: "faults",
      found: [{ kind: "dent" }],
      denied: ["corrosion"],
    });
    const { places, firsts } = seenOf([faults], [faults]);
    expect(new Set(firsts).size).toBe(places.length);
    expect(places).toHaveLength(
      applicablePlaces(sheet.sheet, form).filter(
        ({ item }) => item.circumstance !== true && item.asked !== "statement",
      ).length,
    );
    expect(knownOf("trunk.floor", [faults], [faults])).toMatchObject({ stated: true, seen: true });
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

describe("coverageOf", () => {
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
    const none = { places: [], firsts: new Int32Array(), known: new Uint8Array() };
    expect(coverageOf(none, sheet).bySection).toEqual([]);
  });
});
