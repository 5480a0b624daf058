import { expect, test } from "vitest";
import { isFact, isRemark, labelAndValue } from "./index.ts";

test("facts, remarks and pairs in one cell are told apart", () => {
  expect([
    isFact("Client name"),
    isFact("Date:"),
    isFact("Engine oil"),
    isRemark("Overall comments"),
  ]).toEqual([true, true, false, true]);
  expect(labelAndValue("Oil: clean")).toEqual({ label: "Oil", value: "clean" });
  expect(labelAndValue("Horn - ok")).toEqual({ label: "Horn", value: "ok" });
  expect(labelAndValue("Ratio 3:1")).toBeUndefined();
});
