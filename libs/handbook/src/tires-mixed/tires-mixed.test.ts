import { describe, expect, it } from "vitest";
import { tiresMixed } from "./index.ts";
import type { FittedTire } from "./index.ts";

const radial: FittedTire = { size: "P205/75R15" };
const bias: FittedTire = { size: "G78-15", construction: "bias" };
const all = (front: FittedTire, rear: FittedTire, more: Parameters<typeof tiresMixed>[0] = {}) =>
  tiresMixed({ leftFront: front, rightFront: front, leftRear: rear, rightRear: rear, ...more }).reason;

const beside = (size: string) => all(bias, bias, { rightRear: { size, construction: "bias" } });

describe("tiresMixed", () => {
  it("reads the construction off the size", () => {
    expect(all(radial, radial)).toBe("matched");
    expect(all(radial, bias)).toBe("radial-front-bias-rear");
  });

  it("allows bias tires in front of radial ones, axle by axle", () => {
    expect(all(bias, radial)).toBe("matched");
    expect(all({ ...bias, construction: "bias-belted" }, radial)).toBe("matched");
  });

  it.each([
    [
      { leftFront: { construction: "radial" }, rightRear: { construction: "bias-belted" } },
      "radial-front-bias-rear",
    ],
    [
      { rightFront: { construction: "radial" }, leftRear: { construction: "bias" } },
      "radial-front-bias-rear",
    ],
    [
      { leftFront: { construction: "bias" }, rightFront: { construction: "bias-belted" } },
      "constructions-differ",
    ],
    [{ leftRear: { construction: "bias" }, rightRear: { construction: "radial" } }, "constructions-differ"],
    [{ leftRear: { size: "P205/75R15" }, rightRear: { size: "P205/70R15" } }, "sizes-differ"],
    [{ leftFront: { size: "P205/75R15" }, rightFront: { size: "P205/75R14" } }, "sizes-differ"],
    [{ leftFront: { size: "LT235/75R15" }, rightFront: { size: "235/75R15" } }, "sizes-differ"],
    [{ leftFront: { size: "P205/75R15" } }, "not-all-known"],
    [{}, "not-all-known"],
  ] as const)("%j: %s", (input, reason) => {
    expect(tiresMixed(input).reason).toBe(reason);
  });

  it("leaves equivalents of another system undecided, but not another rim or another height", () => {
    expect(beside("8.25-15")).toBe("equivalent-sizes");
    expect(beside("G78-14")).toBe("sizes-differ");
    expect(beside("A78-15")).toBe("sizes-differ");
    expect(beside("L78-15")).toBe("sizes-differ");
    expect(beside("215/75-15")).toBe("equivalent-sizes");
  });

  it("needs every size and every construction", () => {
    expect(all(radial, { size: "G78-15" })).toBe("not-all-known");
    expect(all(radial, { construction: "radial" })).toBe("not-all-known");
    expect(all(bias, bias, { leftFront: { size: "G78-15", construction: "bias" } })).toBe("matched");
  });

  it("names an unreadable size before it says that not all is known", () => {
    expect(tiresMixed({ leftFront: { size: "big" } }).reason).toBe("size-unreadable");
    expect(tiresMixed({ leftFront: { size: "big" } }).words).toMatchObject({
      leftFront: "big, construction not known",
      rightRear: "size not known, construction not known",
    });
  });
});
