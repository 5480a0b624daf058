import { expect, test } from "vitest";
import { folded } from "./index.ts";

test.each([
  ["  Not   Tested ", "not tested"],
  ["Ft-Lbs", "ft-lbs"],
  ["left\n front\t", "left front"],
  ["", ""],
])("%j is looked up as %j", (text, word) => expect(folded(text)).toBe(word));
