import { describe, expect, it } from "vitest";
import { claimsAgainstDates } from "../claims-against-dates/index.ts";
import { dateOrder } from "../date-order/index.ts";
import type { DateSet } from "../day/index.ts";
import { decadeLess } from "../decade-less/index.ts";
import { dateCorrect } from "./index.ts";

const on = (day: number): DateSet => [{ first: day, last: day }];
const between = (first: number, last: number): DateSet => [{ first, last }];
const built = on(1000);

describe("dateCorrect", () => {
  it.each([
    [-1, "after-build", "after-build"],
    [0, "usual", "usual"],
    [60, "usual", "usual"],
    [61, "plausible", "plausible"],
    [180, "plausible", "plausible"],
    [181, "low-volume-only", "low-volume"],
    [365, "low-volume-only", "low-volume"],
    [366, "too-early", "too-early"],
  ])("%i days before the build: %s, in small numbers %s", (days, ordinary, lowVolume) => {
    expect(dateCorrect({ part: on(1000 - days), built }).reason).toBe(ordinary);
    expect(dateCorrect({ part: on(1000 - days), built, lowVolume: true }).reason).toBe(lowVolume);
  });

  it("judges every reading and both ends of each", () => {
    expect(dateCorrect({ part: between(930, 960), built }).reason).toBe("plausible");
    expect(dateCorrect({ part: between(810, 825), built }).reason).toBe("low-volume-only");
    expect(dateCorrect({ part: between(600, 700), built }).reason).toBe("some-readings");
    expect(dateCorrect({ part: between(990, 1010), built }).reason).toBe("some-readings");
    expect(dateCorrect({ part: on(990), built: between(980, 1030) }).reason).toBe("some-readings");
    expect(dateCorrect({ part: [...on(100), ...on(1200)], built }).reason).toBe("fits-nowhere");
    expect(dateCorrect({ part: [...on(100), ...on(990)], built }).alternatives).toEqual([
      "900 days before",
      "10 days before",
    ]);
    expect(dateCorrect({ part: [...between(1002, 1004), ...on(990)], built }).alternatives).toEqual([
      "2 to 4 days after",
      "10 days before",
    ]);
  });

  it("goes by the reading that fits least where all fit", () => {
    const part = [...on(990), ...on(900)];
    expect(dateCorrect({ part, built })).toMatchObject({
      reason: "plausible",
      ranges: { days: { low: 10, high: 100 } },
    });
    expect(dateCorrect({ part: [...on(990), ...on(700)], built }).reason).toBe("low-volume-only");
    expect(dateCorrect({ part: [...on(990), ...on(700)], built, lowVolume: true }).reason).toBe("low-volume");
    expect(dateCorrect({ part: [...on(1000), ...on(100)], built }).alternatives).toEqual([
      "0 days before",
      "900 days before",
    ]);
  });

  it("gives the days between, least and most", () => {
    expect(dateCorrect({ part: between(930, 960), built: between(1000, 1005) }).ranges).toEqual({
      days: { low: 40, high: 75, unit: "d" },
    });
  });

  it("goes by the firm's days", () => {
    const firm = {
      "date-correct.usual-days": 90,
      "date-correct.plausible-days": 200,
      "date-correct.low-volume-days": 500,
    };
    expect(dateCorrect({ part: on(915), built }, firm).reason).toBe("usual");
    expect(dateCorrect({ part: on(805), built }, firm).reason).toBe("plausible");
    expect(dateCorrect({ part: on(505), built }, firm).reason).toBe("low-volume-only");
  });

  it("has nothing to say without both", () => {
    expect([dateCorrect({ part: [], built }).reason, dateCorrect({ part: built, built: [] }).reason]).toEqual(
      ["too-few", "too-few"],
    );
  });
});

describe("dateOrder", () => {
  it.each([
    [on(1), on(1), on(1), "in-order"],
    [on(1), on(2), on(3), "in-order"],
    [on(2), on(1), on(3), "out-of-order"],
    [on(1), on(3), on(2), "out-of-order"],
    [on(3), undefined, on(2), "out-of-order"],
    [on(3), [], on(4), "in-order"],
    [between(1, 3), between(3, 5), on(5), "in-order"],
    [between(1, 4), between(3, 5), on(5), "some-readings"],
    [between(4, 6), between(1, 4), on(9), "some-readings"],
    [between(5, 6), between(1, 4), on(9), "out-of-order"],
    [between(1, 9), undefined, on(5), "some-readings"],
    [on(4), between(1, 9), on(3), "out-of-order"],
  ])("cast %j, assembled %j, built %j: %s", (cast, assembled, last, reason) => {
    expect(dateOrder({ cast, assembled, built: last }).reason).toBe(reason);
  });

  it("keeps the ways that remain possible", () => {
    expect(dateOrder({ cast: [...on(0), ...on(9)], built: on(5) }).alternatives).toEqual([
      "cast 1970-01-01 and built 1970-01-06",
    ]);
  });
});

describe("decadeLess", () => {
  const candidates = [...on(0), ...on(100), ...on(200)];

  it("takes away only what another fact rules out", () => {
    expect(
      decadeLess({
        code: "7",
        candidates,
        facts: [
          { first: 0, last: 100 },
          { first: 100, last: 999 },
        ],
      }),
    ).toMatchObject({ reason: "one-left", alternatives: ["1970-04-11"] });
    expect(decadeLess({ code: "7", candidates, facts: [{ first: 1, last: 200 }] }).reason).toBe(
      "several-left",
    );
    expect(decadeLess({ code: "7", candidates, facts: [{ first: 1, last: 99 }] }).reason).toBe("none-left");
  });

  it("sets the claim against what is left", () => {
    expect(decadeLess({ code: "7", candidates, facts: [], claimed: between(90, 110) }).reason).toBe(
      "several-left",
    );
    expect(decadeLess({ code: "7", candidates, facts: [], claimed: between(101, 199) }).reason).toBe(
      "claim-not-among",
    );
    expect(
      decadeLess({ code: "7", candidates, facts: [{ first: 50, last: 150 }], claimed: on(100) }).reason,
    ).toBe("one-left");
  });
});

describe("claimsAgainstDates", () => {
  it.each([
    [1000 - 730, "no-contradiction"],
    [1000 - 731, "new-but-old"],
    [1005, "no-contradiction"],
  ])("called new on day 1000, dated day %i: %s", (day, reason) => {
    expect(claimsAgainstDates({ claim: "new", stated: on(1000), dates: [on(day)] }).reason).toBe(reason);
  });

  it.each([
    [1000 - 1095, "no-contradiction"],
    [1000 - 1096, "older-than-claimed"],
  ])("called at most three years old, dated day %i: %s", (day, reason) => {
    expect(
      claimsAgainstDates({ claim: "at-most-years", years: 3, stated: on(1000), dates: [on(day)] }).reason,
    ).toBe(reason);
  });

  it.each([
    ["original", "original-but-later"],
    ["untouched", "untouched-but-later"],
  ] as const)("called %s: a part may be of the day the car was built, not later", (claim, reason) => {
    expect(claimsAgainstDates({ claim, built, dates: [on(1000)] }).reason).toBe("no-contradiction");
    expect(claimsAgainstDates({ claim, built, dates: [on(1001)] }).reason).toBe(reason);
    expect(claimsAgainstDates({ claim, built, dates: [between(990, 1001)] }).reason).toBe("some-readings");
  });

  it.each([
    ["fitted-with-bill", "fitted-before-made"],
    ["seen-in-photograph", "pictured-before-made"],
  ] as const)("%s: a part is made on or before the day", (claim, reason) => {
    expect(claimsAgainstDates({ claim, document: built, dates: [on(1000)] }).reason).toBe("no-contradiction");
    expect(claimsAgainstDates({ claim, document: built, dates: [on(1001)] }).reason).toBe(reason);
  });

  it("breaks on any one date, and needs some", () => {
    const input = { claim: "original", built } as const;
    expect(claimsAgainstDates({ ...input, dates: [on(1), on(2), on(1001)] }).reason).toBe(
      "original-but-later",
    );
    // A date that fits is not named among those that do not.
    expect(claimsAgainstDates({ ...input, dates: [on(1), on(1001)] }).words?.dates).toBe("1972-09-28");
    expect(claimsAgainstDates({ ...input, dates: [on(1), between(1, 2000)] }).reason).toBe("some-readings");
    expect(claimsAgainstDates({ ...input, dates: [[...on(1), ...on(2000)]] }).reason).toBe("some-readings");
    expect(claimsAgainstDates({ ...input, dates: [on(1), on(2)] }).words?.dates).toBe(
      "1970-01-02; 1970-01-03",
    );
    expect(claimsAgainstDates({ ...input, dates: [[], on(1)] }).reason).toBe("no-contradiction");
    expect(claimsAgainstDates({ ...input, dates: [[]] }).reason).toBe("too-few");
    expect(claimsAgainstDates({ ...input, built: [], dates: [on(1)] }).reason).toBe("too-few");
  });

  it("says what new means only where new was claimed", () => {
    expect(
      claimsAgainstDates({ claim: "new", stated: on(1000), dates: [on(990)] }).limits?.map(({ id }) => id),
    ).toEqual(["claims.new-days"]);
    expect(claimsAgainstDates({ claim: "original", built, dates: [on(990)] })).not.toHaveProperty("limits");
    expect(
      claimsAgainstDates({ claim: "new", stated: on(1000), dates: [on(960)] }, { "claims.new-days": 30 })
        .reason,
    ).toBe("new-but-old");
    expect(claimsAgainstDates({ claim: "original", built, dates: [on(990)] })).not.toHaveProperty(
      "figures.years",
    );
    expect(
      claimsAgainstDates({ claim: "at-most-years", years: 3, stated: on(1000), dates: [on(990)] }).figures,
    ).toEqual({ years: { value: 3, unit: "a" } });
  });
});
