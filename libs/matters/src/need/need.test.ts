import { expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import { line, sheet, unseen } from "../../testing/lines.ts";
import { needOf } from "./index.ts";

const needed = (entry: Entry): string => {
  const item = sheet.items.get(entry.item)?.item;
  if (item === undefined) throw new Error(`the sheet has no ${entry.item}`);
  return needOf(entry, item);
};

it.each([
  ["a paper needs the paper", "identity.lien", "unseen-papers"],
  ["a number needs somebody at the car", "identity.vin@main-plate", "unseen-numbers"],
  ["a number read from below is a number all the same", "identity.casting-number", "unseen-numbers"],
  ["what is tried on the road", "road.shifts", "unseen-road"],
  ["what needs a drive, though it is a matter of the brakes", "brakes.pull", "unseen-road"],
  ["a cold start is a part of the drive", "road.cold-start", "unseen-road"],
  ["a rail needs a lift", "underbody.rails@left-front", "unseen-lift"],
  ["a leak needs a lift", "driveline.leaks-before@oil-pan", "unseen-lift"],
  ["what lies below needs a lift though it does not say so", "underbody.ground-clearance", "unseen-lift"],
  ["a drum has to come off, on whatever lift", "brakes.drum-diameter@left-rear", "unseen-opened"],
  ["a plug has to come out, hot or not", "engine.compression@cylinder-1", "unseen-opened"],
  ["a carpet needs leave", "interior.carpet", "unseen-opened"],
  ["smoke needs a cold engine", "engine.smoke-cold", "unseen-running"],
  ["oil pressure needs a hot one", "engine.oil-pressure-idle", "unseen-running"],
  ["a lamp needs eyes", "electrics.lamps@left-stop", "unseen-looking"],
])("%s: %s", (_, place, need) => {
  expect(needed(unseen(place))).toBe(need);
});

it.each(["not-seen-needs-dismantling", "not-seen-not-permitted", "not-seen-covered"] as const)(
  "what the inspector says had to be opened does: %s",
  (reason) => {
    expect(needed(unseen("electrics.lamps@left-stop", { reason }))).toBe("unseen-opened");
    expect(needed(unseen("underbody.rails@left-front", { reason }))).toBe("unseen-opened");
    expect(needed(unseen("road.shifts", { reason }))).toBe("unseen-road");
  },
);

it("what was found, and nothing judges, needs a yardstick and no second look", () => {
  const found = { outcome: "unstated", marks: ["no-yardstick"] } as const;
  expect(needed(line("underbody.rails@left-front", { ...found, marks: [...found.marks] }))).toBe(
    "no-yardstick",
  );
});
