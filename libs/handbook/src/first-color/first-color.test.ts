import { expect, it } from "vitest";
import { firstColor } from "./index.ts";

it.each([
  ["Y 2", "y-2", "equal"],
  ["dark green", "green", "equal"],
  ["green, dark", "Dark Green", "equal"],
  ["Y", "R", "differs"],
  ["40", "84", "differs"],
  ["dark green", "red", "differs"],
  ["40", "dark blue", "other-terms"],
  ["red", "PW4", "other-terms"],
])("the tag says %s, unpainted spots show %s: %s", (tag, color, reason) => {
  const result = firstColor({ tag, spots: [{ place: "under the dash", color }] });
  expect(result.reason).toBe(reason);
});

it("differs where any spot shows another color in the tag's own terms", () => {
  const spots = ["blue", "84"].map((color) => ({ place: "under the dash", color }));
  expect(firstColor({ tag: "40", spots })).toMatchObject({
    reason: "differs",
    alternatives: ["under the dash: 84"],
  });
});
