import { describe, expect, it } from "vitest";
import { nameOf, oneOf, pointer } from "./context.ts";

const names = (count: number): string[] => Array.from({ length: count }, (_, at) => `p${at + 1}`);

describe("what would work, as a sentence names it", () => {
  it.each([
    [[], "nothing"],
    [["hood"], "hood"],
    [["hood", "roof"], "hood or roof"],
    [["hood", "roof", "trunk-lid"], "hood, roof or trunk-lid"],
  ])("%j is %s", (list, text) => {
    expect(oneOf(list)).toBe(text);
  });

  it("names up to fourteen, and of more the first fourteen and how many there are", () => {
    expect(oneOf(names(14))).toBe("p1, p2, p3, p4, p5, p6, p7, p8, p9, p10, p11, p12, p13 or p14");
    expect(oneOf(names(15))).toBe(
      "p1, p2, p3, p4, p5, p6, p7, p8, p9, p10, p11, p12, p13, p14 … (15 in all)",
    );
  });
});

describe("the name of an item", () => {
  it("stands in quotes, and begins with a capital alone", () => {
    expect(nameOf("power-brake servo")).toBe("“Power-brake servo”");
    expect(nameOf("VIN")).toBe("“VIN”");
  });
});

describe("a pointer into the report", () => {
  it("goes below another, its own signs written as RFC 6901 asks", () => {
    expect(pointer("/findings/2", "answer", "values", 0)).toBe("/findings/2/answer/values/0");
    expect(pointer("", "a/b~c", "~1")).toBe("/a~1b~0c/~01");
    expect(pointer("/vehicle")).toBe("/vehicle");
  });
});
