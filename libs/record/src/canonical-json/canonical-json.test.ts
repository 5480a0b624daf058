import { assert, dictionary, jsonValue, property, string } from "fast-check";
import { expect, test } from "vitest";
import { canonicalJson } from "@evenhand/record/canonical-json";

test("keys stand in order, whatever order they came in", () => {
  expect(canonicalJson({ b: 2, a: [1.0, "x"] })).toBe('{"a":[1,"x"],"b":2}');
});

test("a key without a value is left out", () => {
  expect(canonicalJson({ a: undefined, b: null })).toBe('{"b":null}');
});

test.each([undefined, Number.NaN, Number.POSITIVE_INFINITY, () => 1])("%s cannot be written", (value) => {
  expect(() => canonicalJson(value)).toThrow(TypeError);
});

test("reading back gives the same value, and writing that gives the same text", () => {
  assert(
    property(jsonValue(), (value) => {
      const text = canonicalJson(value);
      expect(canonicalJson(JSON.parse(text))).toBe(text);
      expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
    }),
    { numRuns: 1000 },
  );
});

test("the order in which keys were set never shows", () => {
  assert(
    property(dictionary(string(), jsonValue()), (value) => {
      const reversed = Object.fromEntries(Object.entries(value).toReversed());
      expect(canonicalJson(reversed)).toBe(canonicalJson(value));
    }),
    { numRuns: 1000 },
  );
});
