import { describe, expect, it } from "vitest";
import { comparisonOf, line, sheet, silent, unseen } from "../../testing/lines.ts";
import { matters } from "../matters/index.ts";

const nextOf = (...entries: Parameters<typeof comparisonOf>[0]) =>
  matters(comparisonOf(entries), silent).map(({ next }) => next);
const stepOf = (...entries: Parameters<typeof comparisonOf>[0]) => nextOf(...entries)[0]?.step;

describe("what to do about", () => {
  it.each([
    ["a paper that says otherwise", line("identity.title-holder", { severity: "halt" }), "see-paper"],
    ["a paper in doubt", line("identity.title-number", { outcome: "doubtful" }), "see-paper"],
    ["a paper nobody saw", unseen("identity.lien", { severity: "halt" }), "see-paper"],
    ["a number that stops the money", line("identity.vin@main-plate", { severity: "halt" }), "ask"],
    ["miles that do not add up", line("identity.odometer", { severity: "worth" }), "ask"],
    ["a number in doubt", line("identity.vin@main-plate", { outcome: "doubtful" }), "look-again"],
    ["what can hurt somebody", line("brakes.hoses@left-front"), "do-not-drive"],
    ["what the price rests on", line("engine.noise", { severity: "worth" }), "bargain"],
    ["a repair", line("electrics.clock", { severity: "repair" }), "bargain"],
    ["a trifle", line("electrics.clock", { severity: "small" }), "bargain"],
    ["brakes in doubt", line("brakes.hoses@left-front", { outcome: "doubtful" }), "look-again"],
    ["a drum nobody opened", unseen("brakes.drum-diameter@left-rear"), "open-up"],
    ["a car made ready before the visit", line("visit.washed-beforehand"), "look-again"],
  ] as const)("%s: %#", (_, entry, step) => {
    expect(stepOf(entry)).toBe(step);
  });

  it("one danger found and another in doubt: not to be driven", () => {
    const doubtful = line("brakes.hoses@right-front", { outcome: "doubtful" });
    expect(stepOf(line("brakes.hoses@left-front", { severity: "danger" }), doubtful)).toBe("do-not-drive");
  });

  it("says it in words", () => {
    expect(nextOf(line("brakes.hoses@left-front"))).toEqual([
      { step: "do-not-drive", words: "Do not drive it until it is put right" },
    ]);
    expect(nextOf(line("electrics.clock", { severity: "repair" }))).toEqual([
      { step: "bargain", words: "Take it into the price" },
    ]);
    expect(nextOf(line("identity.lien", { severity: "halt" }))).toEqual([
      { step: "see-paper", words: "See the paper before any money moves" },
    ]);
    expect(nextOf(line("identity.odometer", { severity: "worth" }))).toEqual([
      { step: "ask", words: "Ask the dealer" },
    ]);
  });
});

describe("a second look", () => {
  const drum = sheet.items.get("brakes.drum-diameter");
  const drumMinutes = (drum?.item.minutes ?? 0) / (drum?.positionSet?.positions.length ?? 1);

  it("takes the minutes of what is open, an item's shared among its places", () => {
    const one = unseen("brakes.drum-diameter@left-rear");
    const other = unseen("brakes.drum-diameter@right-rear");
    expect(nextOf(one)).toEqual([
      { step: "open-up", words: "Have it opened", minutes: Math.round(drumMinutes) },
    ]);
    expect(nextOf(one, other)[0]?.minutes).toBe(Math.round(2 * drumMinutes));
    expect(drumMinutes).toBeGreaterThan(1);
  });

  it("takes a minute at least, and none for what was found beyond doubt", () => {
    expect(nextOf(line("identity.vin@main-plate", { outcome: "doubtful" }))[0]).toEqual({
      step: "look-again",
      words: "Have it looked at again",
      minutes: 1,
    });
    const shown = line("visit.washed-beforehand");
    expect(nextOf(shown)[0]?.minutes).toBe(1);
  });
});
