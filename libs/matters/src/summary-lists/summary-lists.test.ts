import { expect, test } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import { admitted, line, silent, unasked, unseen } from "../../testing/lines.ts";
import { summaryLines, summaryLists } from "./index.ts";

const entries: Entry[] = [
  unseen("electrics.clock", { severity: "small" }),
  admitted("electrics.horn", { severity: "repair" }),
  unseen("brakes.hoses", { severity: "danger" }),
  line("brakes.pedal-sink"),
  admitted("wheels.fixings", { severity: "danger" }),
  unasked("identity.lien", { severity: "halt" }),
  line("engine.oil", { outcome: "doubtful", standing: "in-doubt", severity: null }),
  unseen("identity.title-holder", { severity: "halt" }),
];
const lists = summaryLists({ entries, order: [4, 3, 6, 1] }, silent);
const indexes = (of: keyof typeof lists) => lists[of].map(({ entry }) => entry);

test("what is in doubt stands in the comparison's order, without what both say is bad", () => {
  expect(indexes("inDoubt")).toEqual([3, 6]);
});

test("of what nobody saw only what a purchase can turn on is listed, the gravest first, two alike as they stand", () => {
  expect(indexes("unseen")).toEqual([5, 7, 2]);
});

test("what both say is bad is listed, the gravest first", () => {
  expect(indexes("bothBad")).toEqual([4, 1]);
});

test("a line keeps what each side said in words, and one that is not there is passed over", () => {
  const horn = { kind: "working", value: "yes" } as const;
  const finding = {
    item: "electrics.horn",
    position: "",
    answer: horn,
    firmness: "asserted",
    basis: "seen",
  } as const;
  const reports = { ...silent, a: { findings: [finding], scales: [] } };
  const found = summaryLines(
    [0, 1, 9],
    { entries: [line("electrics.horn"), unseen("electrics.clock")] },
    reports,
  );
  expect(found.map(({ said, found: isBad }) => ({ said, isBad }))).toEqual([
    { said: { stated: "working", found: null }, isBad: true },
    { said: { stated: "working", found: null }, isBad: false },
  ]);
});
