import { describe, expect, it } from "vitest";
import { placesOf } from "@evenhand/message/format-message";
import { Answer as AnswerSchema, NotSeenReason } from "@evenhand/shared/answer";
import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import { Outcome, Standing } from "@evenhand/shared/outcome";
import type { Report } from "@evenhand/shared/report";
import { Severity } from "@evenhand/shared/severity";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "../compare/index.ts";
import type { CompareOptions } from "../compare/index.ts";
import {
  directionWords,
  firmnessWords,
  notSeenWords,
  outcomeWords,
  sentence,
  sentenceContext,
  severityWords,
  standingWords,
} from "./index.ts";
import { lineMessages } from "./messages.ts";

type Sides = { a?: Partial<Report>; b?: Partial<Report>; options?: CompareOptions };

/** The sentences about the place of the given findings. */
const say = (a: Finding | null, b: Finding | null, { a: moreA, b: moreB, options }: Sides = {}): string[] => {
  const [first, second] = [statement(a ? [a] : [], moreA), inspection(b ? [b] : [], moreB)];
  const place = a ?? b;
  return compare(first, second, sheet, options)
    .entries.filter(({ item, position }) => item === place?.item && position === place.position)
    .map((entry) =>
      sentence(entry, sentenceContext(entry, sheet.sheet, first, second)).replaceAll("\u00A0", " "),
    );
};

const about =
  (item: string, position = "") =>
  (answer: Answer, more: Partial<Finding> = {}): Finding =>
    finding(item, answer, { position, ...more });
const horn = about("electrics.horn");
const works = (value: "yes" | "no" | "not-known") => horn({ kind: "working", value });
const tread = (...values: number[]) =>
  about("wheels.tread-depth", "left-front")(
    { kind: "reading", unit: "1/32in", values: values.map((value) => ({ value })) },
    { instrument: "gauge" },
  );
const miles = (value: number, more: Partial<Finding> = { instrument: "gauge" }) =>
  about("identity.odometer")({ kind: "reading", unit: "mi", values: [{ value }] }, more);
const gauge = { instruments: [{ id: "gauge", name: "tread gauge" }] };
const gauged = { a: gauge, b: gauge };

const play = (value: number) =>
  about("steering.free-play")(
    { kind: "reading", unit: "in", values: [{ value }, { value }] },
    { instrument: "gauge" },
  );

const treadInMillimeters = (value: number) =>
  about("wheels.tread-depth", "left-front")(
    { kind: "reading", unit: "mm", values: [{ value }, { value }, { value }] },
    { instrument: "gauge" },
  );

const hot = (value: number) =>
  about("road.temperature-after-20")(
    { kind: "reading", unit: "degF", values: [{ value }] },
    { instrument: "gauge" },
  );

describe("a sentence about readings", () => {
  it("gives both, the difference with its uncertainty, and what matters", () => {
    expect(say(tread(8, 8, 8), tread(4, 4, 4), gauged)).toEqual([
      "Stated 8.0⁄32 in, found 4.0⁄32 in: the difference of (4.0 ± 1.0)⁄32 in (0.5⁄32 in of use is allowed between the visits) is more than the 2⁄32 in that matters.",
    ]);
    expect(say(tread(8, 8, 8), tread(8, 8, 8), gauged)).toEqual([
      "Stated 8.0⁄32 in, found 8.0⁄32 in: the difference of (0.0 ± 1.0)⁄32 in lies within the 2⁄32 in that matters.",
    ]);
  });

  it("asks of an odometer for no instrument, and gives no figure that nobody wrote", () => {
    expect(say(miles(48_210, {}), miles(48_260, {}))[0]).toMatch(/^Stated 48,210 mi, found 48,260 mi: /);
  });

  it("says when it was by eye", () => {
    expect(say(tread(8, 8, 8), tread(8, 8, 8), { a: gauge })[0]).toMatch(
      /^Stated 8\.0⁄32 in, found [\d.]+⁄32 in by eye: .*neither confirms nor contradicts/,
    );
  });

  it("speaks of a limit that is not surely met", () => {
    expect(say(tread(5, 5, 5), tread(1, 1, 1), gauged)[0]).toMatch(
      /; at least 2⁄32 in is required: the statement meets it, the inspection fails it\.$/,
    );
    expect(say(null, tread(1, 1, 1), gauged)[0]).toBe(
      "Found 1, 1 and 1⁄32 in; the statement says nothing of it; at least 2⁄32 in is required: the inspection fails it.",
    );
    expect(say(tread(2, 2, 2), null, gauged)[0]).toMatch(
      /required: the statement meets it as read, too closely to be sure\.$/,
    );
  });

  it("tells every reading where the worst of them decides, and which that is, in the unit it was read in", () => {
    const bearing = about("steering.wheel-bearing-play", "right-front");
    const rocked = (one: number, other: number) =>
      bearing({ kind: "reading", unit: "in", values: [{ value: one }, { value: other }] }, {});
    // Their means lie under the figure, and would speak against the sentence they stand in.
    expect(say(rocked(0.01, 0.002), rocked(0.003, 0.008), {})[0]).toBe(
      "Stated 0.01 and 0.002 in (instrument not named), found 0.003 and 0.008 in (instrument not named): " +
        "both say it is past the limit; common practice looks for at most 0.2 mm (0.00787 in): the statement " +
        "fails it as read, too closely to be sure (at worst 0.01 in), the inspection fails it as read, too " +
        "closely to be sure (at worst 0.008 in).",
    );
  });

  it("speaks of common practice as of no requirement, either way", () => {
    const gap = about("gaps.width-top", "hood-left-fender");
    const wide = (value: number) =>
      gap({ kind: "reading", unit: "mm", values: [{ value }] }, { instrument: "gauge" });
    expect(say(wide(5), wide(12), gauged)[0]).toMatch(
      /; common practice looks for at most 8 mm: the statement meets it, the inspection fails it/,
    );
    expect(say(wide(5), wide(0.5), gauged)[0]).toMatch(
      /; common practice looks for at least 2 mm: the statement meets it, the inspection fails it/,
    );
  });

  it("gives a limit of a temperature by where it lies on the reader's scale", () => {
    expect(say(hot(190), hot(240), gauged)[0]).toMatch(
      /; common practice looks for at most 102 °C \(216 °F\): /,
    );
  });

  it("speaks of a limit upward, of every limit not met, and of none that is", () => {
    expect(say(play(1), play(3), gauged)[0]).toMatch(
      /; at most 2 in is allowed: the statement meets it, the inspection fails it\.$/,
    );
    expect(say(play(1), play(1), gauged)[0]).not.toMatch(/allowed:/);
    expect(say(null, play(1), gauged)[0]).not.toMatch(/allowed:/);
  });

  it("speaks of the use allowed between the visits", () => {
    expect(say(miles(61204), miles(61404), gauged)[0]).toMatch(
      /: the difference of 200\.\d+ ± 0\.\d+ mi \(50 mi of use is allowed between the visits\) is more than/,
    );
    expect(say(miles(61204), miles(61214), gauged)[0]).toMatch(
      /: use may explain the difference of 10\.\d+ ± 0\.\d+ mi \(50 mi of use is allowed between the visits\)\.$/,
    );
  });

  it("gives each side in its reader's own unit, and the difference in the one they share", () => {
    expect(say(treadInMillimeters(6.4), tread(4, 4, 4), gauged)[0]).toMatch(
      /^Stated 6\.40 mm, found 4\.0⁄32 in: the difference of \(4\.1 ± 1\.0\)⁄32 in /,
    );
    expect(say(treadInMillimeters(6.4), treadInMillimeters(3.2), gauged)[0]).toMatch(
      /^Stated 6\.40 mm, found 3\.20 mm: the difference of 3\.20 ± 0\.\d\d mm \(0\.397 mm of use .* is more than the 1\.59 mm that matters\.$/,
    );
  });
});

describe("a sentence about silence", () => {
  it.each([
    [works("yes"), null, "Stated working; the inspection does not speak of it."],
    [
      works("yes"),
      horn({ kind: "not-seen", reason: "no-tool" }),
      "Stated working; in the inspection not seen: no tool for it.",
    ],
    [
      null,
      horn({ kind: "not-seen", reason: "covered" }),
      "The statement says nothing of it, and in the inspection it was not seen: covered.",
    ],
    [
      horn({ kind: "not-seen", reason: "no-time" }),
      horn({ kind: "not-seen", reason: "covered" }),
      "The statement says nothing of it, and in the inspection it was not seen: covered.",
    ],
    [null, works("no"), "Found not working; the statement says nothing of it."],
    [null, works("yes"), "Found working, as it should be; the statement says nothing of it."],
    [works("not-known"), works("no"), "Found not working; the statement says nothing of it."],
    [works("yes"), works("not-known"), "Stated working; the inspection could not tell."],
  ])("%#", (a, b, text) => {
    expect(say(a, b)).toEqual([text]);
  });
});

const hood = about("body.faults", "hood");
const rust = (millimeters: number) => ({
  kind: "corrosion",
  spot: "lower-rear",
  extent: { value: millimeters, unit: "mm" as const },
});

const foundAlone = (
  item: string,
  position: string,
  unit: UnitSymbol,
  value: number,
  more: Partial<Finding> = {},
) =>
  say(
    null,
    about(item, position)({ kind: "reading", unit, values: [{ value }] }, { instrument: "gauge", ...more }),
  )[0];

describe("a sentence about what nobody stated and nothing calls", () => {
  it("says why: between ordinary and bad, a condition that was not noted, no figure at all, no reading", () => {
    expect(foundAlone("body.paint-thickness", "hood", "um", 300)).toBe(
      "Found 300 µm; the statement says nothing of it, and it lies between ordinary and bad.",
    );
    expect(foundAlone("brakes.drum-diameter", "left-rear", "in", 10.02)).toMatch(
      /, and what would judge it was not noted\.$/,
    );
    expect(foundAlone("engine.timing", "", "deg", 11)).toMatch(/, and there is no figure to judge it by\.$/);
    const path = about("engine.leak-down-path", "cylinder-1")({ kind: "choice", option: "crankcase" });
    expect(say(null, path)[0]).toMatch(/, and there is nothing to judge it by\.$/);
  });
});

describe("a sentence about faults", () => {
  it("speaks of each fault and denial by itself", () => {
    const stated = hood({ kind: "faults", found: [rust(40)], denied: ["dent", "filler"] });
    const found = hood({
      kind: "faults",
      found: [rust(300), { kind: "dent", spot: "upper-front" }],
      denied: ["filler"],
    });
    const [denied, both, agreed] = say(stated, found);
    expect(denied).toBe("The statement says there is no dent; found dent at upper front.");
    expect(both).toMatch(
      /^Both report corrosion at lower rear, 40\.\d mm by eye and 300 mm by eye: the difference of 260 ± \d\d mm is more than the 85 mm that matters\.$/,
    );
    expect(agreed).toBe("Both say there is no filler.");
  });

  it("tells all from a kind", () => {
    const sound = hood({ kind: "faults", found: [], denied: ["blister"] });
    expect(say(sound, hood({ kind: "faults", found: [rust(40)], denied: [] }))[0]).toMatch(
      /^The statement says there is no blister; found corrosion/,
    );
    const none = hood({ kind: "faults", found: [], denied: "all" });
    expect(say(none, none)).toEqual(["Both say there are no faults beyond any they list."]);
    expect(say(none, hood({ kind: "faults", found: [rust(40)], denied: [] }))).toEqual([
      "The statement says there are no faults; found corrosion at lower rear, 40 mm.",
    ]);
    expect(say(hood({ kind: "faults", found: [rust(40)], denied: [] }), none)).toEqual([
      "The statement reports corrosion at lower rear, 40 mm; the inspection did not find it.",
    ]);
    expect(say(none, hood({ kind: "faults", found: [], denied: [] }))[0]).toMatch(
      /^The statement says there are no faults beyond any it lists/,
    );
    expect(say(null, none)).toEqual(["Found no faults, as it should be; the statement says nothing of it."]);
    expect(say(null, hood({ kind: "faults", found: [rust(40)], denied: ["dent"] }))).toEqual([
      "Found corrosion at lower rear, 40 mm; the statement says nothing of it.",
      "Found no dent, as it should be; the statement says nothing of it.",
    ]);
  });

  it("gives extents that agree", () => {
    const [text] = say(
      hood({ kind: "faults", found: [rust(40)], denied: [] }),
      hood({ kind: "faults", found: [rust(44)], denied: [] }),
    );
    expect(text).toMatch(
      /^Both report corrosion at lower rear, 40\.\d mm by eye and 44\.\d mm by eye: the difference of 4 ± \d\d mm lies within the 25 mm that matters\.$/,
    );
  });

  it("says where a fault has no extent, and where it has no place", () => {
    const dent = hood({ kind: "faults", found: [{ kind: "dent" }], denied: [] });
    expect(say(dent, dent)).toEqual(["Both report dent, neither of them with its extent."]);
    const extent = { value: 40, unit: "mm" as const };
    const anywhere = hood({ kind: "faults", found: [{ kind: "dent", extent }], denied: [] });
    expect(say(anywhere, anywhere)).toEqual([
      "Both report dent, not both of them where on it: it may be another.",
    ]);
  });
});

describe("a sentence about other answers", () => {
  it("calls nothing read that was not written", () => {
    const tire = about("wheels.tire-identification", "left-front");
    const number = (text: string) => tire({ kind: "code", text });
    expect(say(number("DOT 7K2B XJY 2319"), number("2319"))[0]).toBe(
      "Stated DOT 7K2B XJY 2319, found 2319: the same, written otherwise.",
    );
    expect(say(number("2319"), number("2319"))[0]).toBe("Both read 2319.");
  });

  it("praises no paper for not being there", () => {
    const invoice = about("identity.invoice");
    expect(say(null, invoice({ kind: "presence", value: "absent" }))).toEqual([
      "Found absent; the statement says nothing of it, so that nothing was promised.",
    ]);
    expect(say(null, invoice({ kind: "presence", value: "present" }))).toEqual([
      "Found present, as it should be; the statement says nothing of it.",
    ]);
  });

  it("says which number passes its check digit", () => {
    const vin = about("identity.vin", "main-plate");
    const vehicle = { vehicle: { ...statement([]).vehicle, modelYear: 2003 } };
    const [right, wrong] = [
      vin({ kind: "code", text: "0EVTL82633A007146" }),
      vin({ kind: "code", text: "0EVTL8Z633A007146" }),
    ];
    expect(say(right, wrong, { a: vehicle, b: vehicle })).toEqual([
      "Stated 0EVTL82633A007146, found 0EVTL8Z633A007146: one look-alike character apart, probably misread; only the number in the statement passes its check digit.",
    ]);
    expect(say(right, right, { a: vehicle, b: vehicle })).toEqual(["Both read 0EVTL82633A007146."]);
  });

  it("says grades in words, on any scale, without numbers for the house's", () => {
    const headliner = about("interior.headliner");
    const own = {
      scales: [
        {
          id: "stars",
          name: "Stars",
          grades: [
            { id: "s1", name: "one star" },
            { id: "s2", name: "two stars" },
          ],
        },
        {
          id: "percent",
          name: "Per cent",
          step: 10,
          grades: [
            { id: "low", name: "low" },
            { id: "high", name: "high" },
          ],
        },
      ],
    };
    expect(
      say(
        headliner({ kind: "grade", scale: "house", value: "light-wear" }),
        headliner({ kind: "grade", scale: "house", value: "spent" }),
      ),
    ).toEqual(["Stated light wear, found spent: too far apart for two views of one condition."]);
    expect(
      say(
        headliner({ kind: "grade", scale: "stars", value: "s2" }),
        headliner({ kind: "grade", scale: "percent", value: 90 }),
        { a: own, b: own },
      )[0],
    ).toMatch(/^Stated two stars \(here: light wear or as new\), found 90% \(here: as new\): /);
  });

  it("says choices, presence and colors in words", () => {
    const originality = about("identity.originality", "engine");
    const choice = (option: string) => originality({ kind: "choice", option });
    expect(say(choice("original-to-car"), choice("right-type"))).toEqual([
      "Stated original to the car, found right type: more cannot be shown by looking.",
    ]);
    const spare = about("trunk.spare");
    expect(
      say(spare({ kind: "presence", value: "present" }), spare({ kind: "presence", value: "absent" })),
    ).toEqual(["Stated present, found absent."]);
    const paint = (L: number) =>
      about(
        "body.color",
        "hood",
      )({ kind: "color", geometry: "45/0", metallic: false, values: [{ L, a: 10, b: -20 }] });
    expect(say(paint(40), paint(60))[0]).toMatch(
      /^The two colors are 20\.\d+ ± 0\.\d+ ΔE₀₀ apart, more than the 2 ΔE₀₀ that matters\.$/,
    );
    expect(say(null, paint(40))).toEqual([
      "Found L* 40.0, a* 10.0, b* −20.0; the statement says nothing of it, and there is nothing to judge it by.",
    ]);
  });

  it("names the reports by what they are", () => {
    expect(say(works("yes"), works("no"), { a: { kind: "collection" }, b: { kind: "delivery" } })).toEqual([
      "On collection working, on delivery not working.",
    ]);
    expect(say(works("yes"), null, { a: { kind: "acquisition" } })).toEqual([
      "On acquisition working; the inspection does not speak of it.",
    ]);
  });
});

describe("the catalog", () => {
  it("asks in no line for what nothing fills", () => {
    const places = Object.values(lineMessages.templates).flatMap((template) => placesOf(template).all);
    expect([...new Set(places)].toSorted()).toEqual(
      [
        "A",
        "B",
        "a",
        "b",
        "delta",
        "denied",
        "difference",
        "fault",
        "kind",
        "reason",
        "theA",
        "theB",
        "why",
      ].toSorted(),
    );
  });

  it("has words for every outcome, standing, reason not seen, direction and firmness", () => {
    const words = [
      ...Outcome.options.map(outcomeWords),
      ...Standing.options.map(standingWords),
      ...Severity.options.flatMap((each) => [severityWords(each, true), severityWords(each, false)]),
      ...NotSeenReason.options.map(notSeenWords),
      directionWords("stated-better"),
      firmnessWords("second-hand"),
    ];
    expect(words.every((word) => /^[a-z][a-z -]+$/.test(word))).toBe(true);
    expect(AnswerSchema.options).toHaveLength(10);
  });

  it("refuses what it has no words for", () => {
    const [entry] = compare(statement([]), inspection([]), sheet).entries;
    if (entry === undefined) throw new Error("no entry");
    const context = sentenceContext(entry, sheet.sheet, statement([]), inspection([]));
    expect(() => sentence({ ...entry, reason: "because" }, context)).toThrow(/because/);
    expect(() => sentence({ ...entry, item: "electrics.cannon" }, context)).toThrow(/cannon/);
    expect(sentence(entry, context)).toBe("Neither the statement nor the inspection speaks of it.");
  });
});
