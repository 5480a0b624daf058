import { describe, expect, it } from "vitest";
import type { Instrument } from "@evenhand/shared/report";
import { gauge, reading, treadSpec } from "../../testing/small-items.ts";
import { judgeReadings } from "../../testing/small-readings.ts";
import type { ReadingPair } from "./index.ts";

/** Nothing but the interval judges here. */
const spec = treadSpec({ limits: [] });
const judge = (a: number[], b: number[], more: Partial<ReadingPair> = {}) =>
  judgeReadings(reading("1/32in", ...a), reading("1/32in", ...b), { spec, ...more });
const vague: Instrument = { ...gauge, accuracy: { share: 1 } };
const coarse: Instrument = { ...gauge, resolution: { value: 30, unit: "1/32in" } };

describe("a gauge named as very coarse, or readings far apart", () => {
  it.each<[string, number[], number[], Partial<ReadingPair>]>([
    ["the statement's gauge is right to anything", [12, 12, 12], [6, 6, 6], { instrumentA: vague }],
    ["the inspection's is", [12, 12, 12], [6, 6, 6], { instrumentB: vague }],
    ["it reads in steps as wide as the scale", [12, 12, 12], [6, 6, 6], { instrumentA: coarse }],
    ["two readings of one place lie far apart", [4, 16], [6, 6, 6], {}],
  ])("hide no difference: %s", (_name, a, b, more) => {
    expect(judge(a, b, more)).toMatchObject({
      outcome: "doubtful",
      reason: "beyond-ordinary",
      direction: "stated-better",
      standing: "in-doubt",
    });
  });

  it("confirm nothing, and speak against nothing that an ordinary gauge would not", () => {
    expect(judge([8, 8, 8], [8, 8, 8], { instrumentA: vague })).toMatchObject({
      outcome: "consistent",
      reason: "not-settled",
    });
    expect(judge([8, 8, 8], [8.5, 8.5, 8.5], { instrumentA: vague }).outcome).toBe("consistent");
  });

  it("leave a day's allowance to what drifts", () => {
    const drifting: Partial<ReadingPair> = {
      spec: { ...spec, dayToDay: 20 },
      drifts: true,
      times: () => ({ differentDays: true, later: "b" }),
    };
    expect(judge([12, 12, 12], [6, 6, 6], { ...drifting, instrumentA: vague }).outcome).toBe("consistent");
    const little = { ...drifting, spec: { ...spec, dayToDay: 0.1 } };
    expect(judge([12, 12, 12], [6, 6, 6], { ...little, instrumentA: vague }).reason).toBe("beyond-ordinary");
  });
});
