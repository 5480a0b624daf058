import { caseOf } from "@evenhand/case/case-of";
import type { CaseParty, CaseRow } from "@evenhand/shared/http/cases";
import { expect, test } from "vitest";
import { pageOf } from "../../../apps/api/src/capabilities/cases/home-page.ts";
import { facts, visit } from "../../../libs/case/testing/case-facts.ts";

const named = { id: "d", name: "A yard" };
const car = { id: "v", make: "Uthwick", model: "Alder", modelYear: 1958, identification: "A7K214883" };
/** Cases of one kind of people, taken for open, each at its visit. */
const cases = (as: CaseParty, count: number, state: Parameters<typeof visit>[0]) =>
  Array.from({ length: count }, (_, at) => {
    const standing = caseOf(facts({ by: as, visits: [visit(state)] }));
    const row: CaseRow = {
      id: `${as} ${at}`,
      as,
      car,
      cover: null,
      dealer: named,
      buyer: null,
      openedAt: "",
      standing,
    };
    return { open: true, row };
  });
const noDrafts = { drafts: [], drafting: 0 };
const shownOf = ({ yours, others }: ReturnType<typeof pageOf>): number => yours.length + others.length;

test("who is two kinds has as many open cases as both homes hold, and no more of them than stand there is said", () => {
  const page = pageOf(
    [
      { ...noDrafts, open: 150, items: cases("buyer", 150, "held") },
      { ...noDrafts, open: 120, items: cases("inspector", 120, "confirmed") },
    ],
    50,
  );
  expect([page.open, shownOf(page)]).toEqual([270, 270]);
});

test("where one home holds more than it shows, there are more open cases than stand there", () => {
  const page = pageOf([{ ...noDrafts, open: 230, items: cases("buyer", 200, "held") }], 50);
  expect([page.open, shownOf(page)]).toEqual([230, 200]);
});

test("a case taken for open and found at rest is none of the open ones", () => {
  const items = [...cases("inspector", 2, "confirmed"), ...cases("inspector", 1, "reported")];
  const page = pageOf([{ ...noDrafts, open: 3, items }], 50);
  expect([page.open, shownOf(page), page.rest.length]).toEqual([2, 2, 1]);
});

test("a draft stands once: not beside the case whose next step is to seal it", () => {
  const questions = {
    drafted: null,
    asked: null,
    answered: { count: 1, first: "answering" },
    published: null,
  };
  const standing = caseOf(facts({ by: "dealer", questions }));
  const row: CaseRow = {
    id: "c",
    as: "dealer",
    car,
    cover: null,
    dealer: named,
    buyer: null,
    openedAt: "",
    standing,
  };
  const draft = { kind: "statement", car, version: 1, changedAt: "" } as const;
  const drafts = ["answering", "other"].map((id) => ({ ...draft, id }));
  const page = pageOf([{ open: 1, drafts, drafting: 60, items: [{ open: true, row }] }], 50);
  expect(page.yours.map(({ standing: { next } }) => next?.subject)).toEqual(["answering"]);
  expect([page.drafts.map(({ id }) => id), page.drafting]).toEqual([["other"], 59]);
});
