import { estimate } from "@evenhand/measurement/estimate";
import { describe, expect, it } from "vitest";
import { exactly } from "../interval/index.ts";
import { sentence } from "../sentence/index.ts";
import { rebuiltEngine } from "./index.ts";

const psi = (...values: number[]) =>
  values.map((value, index) => ({ cylinder: index + 1, pressure: exactly(value) }));
const sound = psi(150, 148, 155, 152);
const leak = (value: number) => [{ cylinder: 3, leak: exactly(value) }];
const oil = (pressure: number, makersLeast?: number) => [
  { pressure: exactly(pressure), engineSpeed: exactly(2000), oilTemperature: 95, makersLeast },
];

describe("rebuiltEngine", () => {
  it.each([
    [psi(150, 140, 155, 90), "failed-cylinder"],
    [psi(60, 60, 60, 60), "tired"],
    [psi(99, 99, 99, 99), "tired"],
    [psi(100, 100, 100, 100), "no-contradiction"],
    [psi(150, 127.4, 150, 150), "uneven"],
    [psi(150, 127.6, 150, 150), "no-contradiction"],
    [psi(100, 74.9), "failed-cylinder"],
    [psi(150), "too-few"],
  ] as const)("%#: %s", (pressures, reason) => {
    expect(rebuiltEngine({ pressures }).reason).toBe(reason);
  });

  it.each([
    [{ leaks: leak(20) }, "no-contradiction"],
    [{ leaks: leak(20.1) }, "leaks"],
    [{ oil: oil(20) }, "no-contradiction"],
    [{ oil: oil(19.9) }, "low-oil"],
    [{ oil: oil(30, 40) }, "low-oil"],
    [{ oil: [{ ...oil(9)[0]!, oilTemperature: 40 }] }, "no-contradiction"],
    [{ smokes: true }, "smokes"],
    [{ blowsBy: true }, "blows-by"],
  ] as const)("with even compression and %j: %s", (more, reason) => {
    expect(rebuiltEngine({ pressures: sound, ...more }).reason).toBe(reason);
  });

  it("names the gravest first: a failed cylinder before what else is wrong", () => {
    const everything = { pressures: psi(60, 40), leaks: leak(50), oil: oil(3), smokes: true, blowsBy: true };
    expect(rebuiltEngine(everything).reason).toBe("failed-cylinder");
  });

  it("judges the level only as it was read, warm and with the throttle open; the pattern always", () => {
    expect(rebuiltEngine({ pressures: psi(60, 60), levelCounts: false }).reason).toBe("no-contradiction");
    expect(rebuiltEngine({ pressures: psi(60, 40), levelCounts: false }).reason).toBe("failed-cylinder");
  });

  it("does not accuse within the gauge's uncertainty", () => {
    const near = [100, 98.5].map((value, index) => ({ cylinder: index + 1, pressure: estimate(value, 2) }));
    expect(rebuiltEngine({ pressures: near }).reason).toBe("range-covers");
  });

  it("takes the firm's own figures, and says them", () => {
    const tired = rebuiltEngine({ pressures: psi(110, 112) }, { "rebuilt.least": 120 });
    expect(tired.reason).toBe("tired");
    expect(sentence(tired)).toContain("Judged by the firm's own figure");
    expect(sentence(rebuiltEngine({ pressures: psi(60, 60) }))).toContain("100 psi (common practice)");
  });
});
