import { expect, test } from "vitest";
import { tokenize } from "../tokenize/index.ts";
import { stemAt, stemText } from "./index.ts";

const tokens = tokenize("both doors are good");

test("a stem stands at each token, and nothing beyond them", () => {
  expect([-1, 1, 9].map((at) => stemAt(tokens, at))).toEqual(["", "door", ""]);
});

test("stems from one token to another are one text, begun at the first at the earliest", () => {
  expect(stemText(tokens, 0, 2)).toBe("both door");
  expect(stemText(tokens, -3, 2)).toBe("both door");
  expect(stemText(tokens, 3, 9)).toBe("good");
});
