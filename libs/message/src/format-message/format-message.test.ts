import { IntlMessageFormat } from "intl-messageformat";
import { describe, expect, expectTypeOf, test } from "vitest";
import { formatMessage, placesOf } from "./index.ts";
import type { PlaceNames } from "./index.ts";

describe("a message", () => {
  test("is filled with what it is given, and what that holds is never read as a message", () => {
    expect(formatMessage("{a}, {b} and {a}", { a: "one {b}", b: "<b>'s" })).toBe(
      "one {b}, <b>'s and one {b}",
    );
    expect(formatMessage("the maker's", {})).toBe("the maker's");
  });

  test("puts plain places together as the library does", () => {
    const templates = ["", "{a}", "{a}{b}", "'{a}' isn''t {b}", "{n} of {a}", "<b>{a}</b>", "{a}: # {n}"];
    const values = { a: "one {b}", b: "", n: -0.5 };
    for (const template of templates) {
      const library = new IntlMessageFormat(template, "en-US", undefined, { ignoreTag: true });
      expect(formatMessage<string>(template, values)).toBe(String(library.format(values)));
    }
  });

  test("counts in the right number", () => {
    const days = "{count, plural, one {# day} other {# days}}";
    expect([1, 2, 0].map((count) => formatMessage(days, { count }))).toEqual(["1 day", "2 days", "0 days"]);
  });

  test("is refused where a place is not filled, or where it is no message", () => {
    expect(() => formatMessage<string>("{a} and {b}", { a: "one" })).toThrow("b");
    expect(() => formatMessage<string>("{a", { a: "one" })).toThrow("EXPECT_ARGUMENT_CLOSING_BRACE");
  });
});

test("the places of a message are known, and which may be left out", () => {
  const template = "{a}{b, select, none {} other {; {c} of {b}}} {d, plural, one {# day} other {# days}}{a}";
  expect(placesOf(template)).toEqual({ all: ["a", "b", "c", "d"], optional: ["b"], required: ["a", "d"] });
  expect(formatMessage<string>(template, { a: "x", b: "none", d: 2 })).toBe("x 2 daysx");
  expect(() => formatMessage<string>(template, { a: "x", b: "y", d: 2 })).toThrow("c");
  expect(placesOf("{e, select, one {} other {}}")).toEqual({ all: ["e"], optional: [], required: ["e"] });
  expect(placesOf(template)).toBe(placesOf(template));
});

test("the compiler reads the same places", () => {
  expectTypeOf<PlaceNames<"nothing">>().toEqualTypeOf<never>();
  expectTypeOf<PlaceNames<"{a} and {b}">>().toEqualTypeOf<"a" | "b">();
  expectTypeOf<PlaceNames<"{ a } {n, number} {b}">>().toEqualTypeOf<"a" | "n" | "b">();
  expectTypeOf<PlaceNames<"{n, plural, =0 {no} one {# of {a}} other {# {b}}}{c}">>().toEqualTypeOf<
    "n" | "a" | "b" | "c"
  >();
  expectTypeOf<
    PlaceNames<"{a, select, x {{b, select, none {} other {in {b}}}} other {}} {c}">
  >().toEqualTypeOf<"a" | "b" | "c">();
  expectTypeOf<PlaceNames<"{a}" | "{b} and {c}" | "none">>().toEqualTypeOf<"a" | "b" | "c">();
  expectTypeOf<PlaceNames<string>>().toEqualTypeOf<string>();
});
