import type { CaseParty } from "@evenhand/shared/http/cases";
import { expect, test } from "vitest";
import { facts, visit } from "../../testing/case-facts.ts";
import { caseOf } from "../case-of/index.ts";
import { sortHome } from "./index.ts";

const held = (id: string, until: string | null) => ({
  id,
  as: "buyer" as CaseParty,
  standing: caseOf(facts({ visits: [visit("held", { deadline: until })] })),
});
const at = (state: Parameters<typeof visit>[0], id: string) => ({
  id,
  as: "inspector" as CaseParty,
  standing: caseOf(facts({ by: "inspector", visits: [visit(state)] })),
});

test("one's own are put by the deadline of what comes next, the oldest first where there is none", () => {
  const rows = [
    held("c", null),
    held("b", "2027-05-02T00:00:00Z"),
    held("a", null),
    held("d", "2027-05-01T00:00:00Z"),
  ];
  expect(sortHome(rows).yours.map(({ id }) => id)).toEqual(["d", "b", "a", "c"]);
});

test("what another owes stands apart from one's own, and what nobody owes apart from both, the newest first", () => {
  const { yours, others, rest } = sortHome([
    at("reported", "e"),
    at("accepted", "f"),
    at("confirmed", "g"),
    at("cancelled", "h"),
  ]);
  expect([yours, others, rest].map((rows) => rows.map(({ id }) => id))).toEqual([["g"], ["f"], ["h", "e"]]);
});
