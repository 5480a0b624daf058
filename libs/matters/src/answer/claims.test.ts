import { expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import { admitted, comparisonOf, line, sheet, unasked, unseen } from "../../testing/lines.ts";
import { claimsOf } from "./claims.ts";

const said: Finding = {
  item: "x.y",
  position: "",
  answer: { kind: "working", value: "yes" },
  firmness: "asserted",
  basis: "seen",
};
const notSeen: Finding = { ...said, answer: { kind: "not-seen", reason: "no-tool" } };
const reports = { a: { findings: [said, notSeen], scales: [] }, b: { findings: [said], scales: [] }, sheet };
const of = (...entries: Parameters<typeof comparisonOf>[0]) => claimsOf(comparisonOf(entries), reports);

it.each([
  ["held", line("electrics.horn", { standing: "confirmed", outcome: "agree" })],
  ["held", line("electrics.horn", { standing: "not-contradicted", outcome: "consistent" })],
  ["disclosed", admitted("electrics.horn")],
  ["fell", line("electrics.horn")],
  ["fell", line("electrics.horn", { standing: "contradicted-by-figures" })],
  ["fell", line("electrics.horn", { standing: "not-mentioned", outcome: "unstated" })],
  ["doubtful", line("electrics.horn", { standing: "in-doubt", outcome: "doubtful" })],
  ["unseen", unseen("electrics.horn")],
  ["notComparable", line("electrics.horn", { standing: "too-coarse", outcome: "incomparable" })],
  ["notComparable", line("electrics.horn", { standing: "not-comparable", outcome: "incomparable" })],
] as const)("a claim: %s", (became, entry) => {
  const none = { held: 0, disclosed: 0, fell: 0, doubtful: 0, unseen: 0, notComparable: 0 };
  expect(of(entry)).toMatchObject({ ...none, stated: 1, [became]: 1 });
});

it("is nothing where the statement said nothing, or that it had not looked", () => {
  expect(of(unasked("electrics.horn"))).toMatchObject({ stated: 0, unseen: 0 });
  expect(of(line("electrics.horn", { finding: { a: null, b: 0 } }))).toMatchObject({ stated: 0, fell: 0 });
  expect(of(line("electrics.horn", { finding: { a: 1, b: 0 } }))).toMatchObject({ stated: 0, fell: 0 });
});

it("has not fallen where more was found than was claimed", () => {
  const better = line("electrics.horn", { direction: "found-better" });
  expect(of(better)).toMatchObject({ stated: 1, held: 1, fell: 0, fallen: [] });
});

it("of several lines of one place became what the worst of them says, each place once", () => {
  const horn = ["agree", "differ", "agree"] as const;
  const lines = horn.map((outcome) =>
    line("electrics.horn", { outcome, standing: outcome === "agree" ? "confirmed" : "differs" }),
  );
  const found = of(...lines, line("electrics.lamps@left-stop"), line("electrics.lamps@right-stop"));
  expect(found).toMatchObject({ stated: 3, fell: 3, held: 0 });
  expect(found.fallen).toHaveLength(3);
  const doubtful = line("electrics.horn", { standing: "in-doubt", outcome: "doubtful" });
  expect(of(unseen("electrics.horn"), doubtful)).toMatchObject({ stated: 1, doubtful: 1, unseen: 0 });
});

it("that fell is named, the five gravest, worst first", () => {
  const graver = ["small", "halt", "repair", "danger", "worth", "small"] as const;
  const places = ["horn", "heat", "blower", "clock", "fuel-gauge", "starter"];
  const lines = graver.map((severity, at) => line(`electrics.${places[at] ?? ""}`, { severity }));
  const found = of(...lines);
  expect(found.fell).toBe(6);
  expect(found.fallen.map((words) => words.split(":")[0])).toEqual([
    "heat",
    "clock",
    "fuel gauge",
    "blower",
    "horn",
  ]);
});
