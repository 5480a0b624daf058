import { expect, it } from "vitest";
import type { GradeScale } from "@evenhand/shared/report";
import { isPraise } from "./index.ts";

const scale = (...names: string[]): GradeScale => ({
  id: "own",
  name: "own",
  grades: names.map((name, index) => ({ id: `g${index}`, name })),
});
const five = scale("worn", "used", "Flawless", "finer", "finest");

it.each([
  ["in the middle", five, "g2", true],
  ["a word that praises nothing", five, "g1", false],
  ["at the top, where it belongs", scale("worn", "used", "fair", "good", "flawless"), "g4", false],
  ["in the fourth fifth", scale("worn", "used", "fair", "as new", "finest"), "g3", false],
  ["the better half of two", scale("flawed", "flawless"), "g1", false],
  ["a grade the scale has not", five, "g9", false],
  ["part of another word", scale("imperfect", "minted", "fair"), "g0", false],
] as const)("a word of praise: %s", (_name, own, value, praised) => {
  expect(isPraise({ scale: "own", value }, [own])).toBe(praised);
});

it("is no matter of the house's own words, nor of figures", () => {
  expect(isPraise({ scale: "house", value: "as-new" }, [])).toBe(false);
  expect(isPraise({ scale: "percent", value: 50 }, [{ ...five, id: "percent", step: 5 }])).toBe(false);
});
