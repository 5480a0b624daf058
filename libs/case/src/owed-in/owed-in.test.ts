import { SettlementState } from "@evenhand/shared/settlement";
import { expect, test } from "vitest";
import { owedIn } from "./index.ts";

test("silence of the dealer, the inspector and the buyer is counted in hours; at an end nobody owes anything", () => {
  expect(owedIn("released")).toEqual({ of: "dealer", hours: 24 });
  expect(owedIn("asked")).toEqual({ of: "inspector", hours: 24 });
  expect(owedIn("proved")).toEqual({ of: "buyer", hours: 24 });
  const ends = SettlementState.options.filter((state) => owedIn(state) === null);
  expect(ends).toEqual(["accepted", "finding-stands", "statement-stands", "settled", "left-open"]);
});
