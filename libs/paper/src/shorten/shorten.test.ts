import { assert, property, integer, string } from "fast-check";
import { describe, expect, it } from "vitest";
import { shorten } from "./index.ts";

describe("what is shortened", () => {
  it.each([
    ["rust along the left sill", 40, "rust along the left sill"],
    ["rust along the left sill", 15, "rust along the…"],
    ["rust along the left sill", 16, "rust along the…"],
    ["rust, along", 6, "rust…"],
    ["uninterruptedly", 8, "uninter…"],
    ["  two\n\nlines ", 40, "two lines"],
    ["😀😀😀😀", 3, "😀😀…"],
  ])("%j in %i is %j", (text, most, short) => {
    expect(shorten(text, most)).toBe(short);
  });

  it("is never longer than asked, and says where something is left out", () => {
    assert(
      property(string({ unit: "grapheme", maxLength: 60 }), integer({ min: 2, max: 50 }), (text, most) => {
        const short = shorten(text, most);
        expect(Array.from(short).length).toBeLessThanOrEqual(most);
        const plain = text.replaceAll(/\s+/gu, " ").trim();
        expect(short === plain || short.endsWith("…")).toBe(true);
      }),
    );
  });
});
