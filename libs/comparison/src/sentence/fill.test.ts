import { expect, it } from "vitest";
import { asSentence, fill } from "./fill.ts";

it("fills what it is given and leaves the rest in sight", () => {
  expect(fill("{a}, {b} and {a}", { a: "one" })).toBe("one, {b} and one");
  expect(asSentence("both say yes")).toBe("Both say yes.");
});
