import { expect, test } from "vitest";
import { comparisonSearch, viewOf } from "./search.ts";
import { ownPath } from "../../service/search.ts";

test("what does not fit in an address is left out", () => {
  const raw = {
    view: "graph",
    order: "sheet",
    outcome: ["differ", "better", "agree"],
    standing: 3,
    open: "x",
    q: 1967,
  };
  expect(comparisonSearch(raw)).toEqual({
    view: undefined,
    order: "sheet",
    outcome: ["differ", "agree"],
    standing: undefined,
    severity: undefined,
    section: undefined,
    station: undefined,
    q: "1967",
    open: undefined,
  });
});

test("after signing in nobody is led to another site", () => {
  const said = [
    "/cars",
    "/cars?q=a",
    "//elsewhere.example",
    "/\\elsewhere.example",
    "https://elsewhere.example",
    "",
    5,
  ];
  expect(said.map(ownPath)).toEqual([
    "/cars",
    "/cars?q=a",
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});

test("a bare address shows the answer; one that speaks of lines, as old ones do, shows the lines", () => {
  expect(viewOf(comparisonSearch({}))).toBe("answer");
  expect(viewOf(comparisonSearch({ view: "graph" }))).toBe("answer");
  for (const raw of [
    { open: 0 },
    { section: "engine" },
    { q: "hood" },
    { order: "sheet" },
    { outcome: ["differ"] },
  ])
    expect(viewOf(comparisonSearch(raw))).toBe("items");
  expect(viewOf(comparisonSearch({ view: "whole", open: 3 }))).toBe("whole");
  expect(viewOf(comparisonSearch({ view: "answer", section: "engine" }))).toBe("answer");
});
