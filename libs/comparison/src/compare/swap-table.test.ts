import { describe, expect, it } from "vitest";
import type { AnswerOf } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "./index.ts";

const faults = (found: string[], denied: AnswerOf<"faults">["denied"] = []): Finding =>
  finding("trunk.floor", { kind: "faults", found: found.map((kind) => ({ kind })), denied });
const unseen = finding("trunk.floor", { kind: "not-seen", reason: "covered" });
const rust = faults(["corrosion"]);
const otherwise = faults(["dent"]);
const rustDenied = faults(["dent"], ["corrosion"]);
const none = faults([], "all");

/** What is said of corrosion, or of everything where all is denied. */
const said = (a: Finding | null, b: Finding | null): (string | undefined)[] => {
  const { entries } = compare(statement(a ? [a] : []), inspection(b ? [b] : []), sheet);
  const entry = entries.find(
    ({ item, atom }) =>
      item === "trunk.floor" && atom.of !== "answer" && ["corrosion", "all"].includes(atom.kind),
  );
  return [
    entry?.outcome,
    entry?.direction,
    entry?.standing,
    entry?.coverageOnly === true ? "coverage only" : "listed",
  ];
};

const horn = (value: "yes" | "no"): Finding => finding("electrics.horn", { kind: "working", value });
const blind = finding("electrics.horn", { kind: "not-seen", reason: "no-time" });
const saidOfHorn = (a: Finding | null, b: Finding | null) => {
  const { entries } = compare(statement(a ? [a] : []), inspection(b ? [b] : []), sheet);
  const entry = entries.find(({ item }) => item === "electrics.horn");
  return entry?.coverageOnly === true ? "seen, sound, not stated" : entry?.outcome;
};

/** How left-over faults and silence exchange when the two sides are exchanged: line by line. */
describe("the table of exchange", () => {
  it.each<[string, Finding | null, Finding | null, string[], string[]]>([
    [
      "a fault against another fault",
      rust,
      otherwise,
      ["doubtful", "found-better", "in-doubt", "listed"],
      ["unstated", "neither", "not-mentioned", "listed"],
    ],
    [
      "a fault against its denial",
      rust,
      rustDenied,
      ["doubtful", "found-better", "in-doubt", "listed"],
      ["differ", "stated-better", "differs", "listed"],
    ],
    [
      "a fault against none at all",
      rust,
      none,
      ["doubtful", "found-better", "in-doubt", "listed"],
      ["differ", "stated-better", "differs", "listed"],
    ],
    [
      "a fault against not seen",
      rust,
      unseen,
      ["unseen", "neither", "unseen", "listed"],
      ["unstated", "neither", "not-mentioned", "listed"],
    ],
    [
      "a fault against silence",
      rust,
      null,
      ["unseen", "neither", "unseen", "listed"],
      ["unstated", "neither", "not-mentioned", "listed"],
    ],
    [
      "a denial against another fault",
      rustDenied,
      otherwise,
      ["consistent", "neither", "not-contradicted", "listed"],
      ["consistent", "neither", "not-mentioned", "coverage only"],
    ],
    [
      "a denial against not seen",
      rustDenied,
      unseen,
      ["unseen", "neither", "unseen", "listed"],
      ["consistent", "neither", "not-mentioned", "coverage only"],
    ],
    [
      "a denial against silence",
      rustDenied,
      null,
      ["unseen", "neither", "unseen", "listed"],
      ["consistent", "neither", "not-mentioned", "coverage only"],
    ],
    [
      "none at all against silence",
      none,
      null,
      ["unseen", "neither", "unseen", "listed"],
      ["consistent", "neither", "not-mentioned", "coverage only"],
    ],
    [
      "a denial against a denial",
      rustDenied,
      rustDenied,
      ["agree", "neither", "confirmed", "listed"],
      ["agree", "neither", "confirmed", "listed"],
    ],
    [
      "a fault against the same fault",
      rust,
      rust,
      ["consistent", "neither", "agreed-fault", "listed"],
      ["consistent", "neither", "agreed-fault", "listed"],
    ],
  ])("%s", (_name, a, b, there, back) => {
    expect(said(a, b)).toEqual(there);
    expect(said(b, a)).toEqual(back);
  });

  it.each<[string, Finding | null, Finding | null, string, string]>([
    ["sound against silence", horn("yes"), null, "unseen", "seen, sound, not stated"],
    ["bad against silence", horn("no"), null, "unseen", "unstated"],
    ["sound against not seen", horn("yes"), blind, "unseen", "seen, sound, not stated"],
    ["bad against not seen", horn("no"), blind, "unseen", "unstated"],
    ["not seen against silence", blind, null, "unseen", "unseen"],
    ["silence on both sides", null, null, "unseen", "unseen"],
  ])("%s", (_name, a, b, there, back) => {
    expect(saidOfHorn(a, b)).toBe(there);
    expect(saidOfHorn(b, a)).toBe(back);
  });
});
