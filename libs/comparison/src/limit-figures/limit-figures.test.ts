import { describe, expect, it } from "vitest";
import type { LimitCall, LimitFigures } from "@evenhand/shared/comparison";
import { treadSpec } from "../../testing/small-items.ts";
import { failsLimit, limitConflict, limitFigures } from "./index.ts";

const spec = treadSpec();
const side = (lowest: number, highest = lowest, standardUncertainty = 0.2) => ({
  estimate: {
    value: (lowest + highest) / 2,
    standardUncertainty,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  },
  lowest,
  highest,
});
const first = (limits: LimitFigures[]) => limits[0];

describe("limitFigures", () => {
  it("passes equality, and rounding with it", () => {
    expect(first(limitFigures(spec, side(2), side(2 - 1e-10)))).toMatchObject({
      a: { plain: "pass" },
      b: { plain: "pass" },
    });
  });

  it("fails by a single reading", () => {
    expect(first(limitFigures(spec, side(1.9, 9), null))?.a?.plain).toBe("fail");
  });

  it("judges a minimum by the lowest reading, in sureness and plainly", () => {
    expect(first(limitFigures(spec, side(3, 9), side(1)))).toMatchObject({
      a: { plain: "pass", call: "meets" },
      b: { plain: "fail", call: "fails" },
    });
  });

  it("lets rounding under 1e-9 of δ pass, and no more", () => {
    expect(first(limitFigures(spec, side(2 - 1e-9), side(2 - 3e-9)))).toMatchObject({
      a: { plain: "pass" },
      b: { plain: "fail" },
    });
  });

  it("judges a maximum by the highest reading", () => {
    const most = treadSpec({
      limits: [
        { side: "max", value: 2, severity: "danger", source: { kind: "regulation", text: "a limit" } },
      ],
    });
    expect(first(limitFigures(most, side(1, 2), side(1, 2.1)))).toMatchObject({
      a: { plain: "pass" },
      b: { plain: "fail" },
    });
    expect(first(limitFigures(most, side(1), side(3)))).toMatchObject({
      a: { call: "meets" },
      b: { call: "fails" },
    });
  });

  it("calls marginal what may be either", () => {
    const limit = first(limitFigures(spec, side(2), null));
    expect(limit?.a).toMatchObject({ call: "marginal", probability: 0.5 });
    expect(limit?.b).toBeNull();
  });

  it("names the limit and its source", () => {
    expect(first(limitFigures(spec, null, null))).toMatchObject({
      side: "min",
      value: 2,
      unit: "1/32in",
      source: "a limit",
    });
  });
});

const call = (word: LimitCall["call"], plain: LimitCall["plain"]): LimitCall => ({
  plain,
  probability: 0.5,
  call: word,
});
const [meets, fails] = [call("meets", "pass"), call("fails", "fail")];
const [justPasses, justFails] = [call("marginal", "pass"), call("marginal", "fail")];
const row = (a: LimitCall | null, b: LimitCall | null): LimitFigures => ({
  side: "min",
  value: 2,
  unit: "mm",
  source: "",
  a,
  b,
});

describe("limitConflict", () => {
  it.each([
    ["opposite", meets, fails],
    ["opposite", fails, meets],
    ["same-failure", fails, fails],
    ["same-failure", justFails, fails],
    ["one-fails", justPasses, fails],
    ["one-fails", justFails, meets],
    ["clear", meets, justPasses],
    ["clear", fails, null],
    ["clear", null, fails],
  ] as const)("%s", (expected, a, b) => {
    expect(limitConflict([row(a, b)])).toBe(expected);
  });

  it("takes the most pressing of several limits", () => {
    expect(limitConflict([row(meets, meets), row(fails, fails)])).toBe("same-failure");
    expect(limitConflict([row(fails, fails), row(justFails, meets)])).toBe("one-fails");
    expect(limitConflict([row(justFails, meets), row(meets, fails)])).toBe("opposite");
    expect(limitConflict([])).toBe("clear");
  });
});

describe("failsLimit", () => {
  it("is by plain failing or by the call", () => {
    expect(failsLimit([row(justFails, meets)], "a")).toBe(true);
    expect(failsLimit([row(justFails, meets)], "b")).toBe(false);
    expect(failsLimit([row(call("fails", "pass"), null)], "a")).toBe(true);
    expect(failsLimit([row(null, null)], "a")).toBe(false);
    expect(failsLimit([row(meets, meets), row(fails, meets)], "a")).toBe(true);
  });
});
