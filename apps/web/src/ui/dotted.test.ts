import { expect, test } from "vitest";
import { dotted } from "./dotted";

test("what is not there leaves no dot", () => {
  expect(dotted(["Applied", null, "", undefined, "Brakes"])).toBe("Applied · Brakes");
});

test("where there is nothing to say, nothing is said", () => {
  expect(dotted([null, ""])).toBe("");
});
