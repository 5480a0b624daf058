import { expect, test } from "vitest";
import { chooseEntries, type Compared } from "./index.ts";

const entry = (more: object): object => ({
  item: "electrics.horn",
  position: "",
  outcome: "differ",
  direction: "stated-better",
  standing: "differs",
  finding: { a: 0, b: 0 },
  marks: [],
  ...more,
});
/** Only what is read of the three: the rest of a comparison and of a report says nothing here. */
const compared: Compared = JSON.parse(
  JSON.stringify({
    comparison: {
      entries: [entry({}), entry({ direction: "found-better" }), entry({ finding: { a: null, b: 0 } })],
    },
    a: { instruments: [], findings: [{ item: "electrics.horn", person: "rowan" }] },
    b: {
      instruments: [
        { id: "g0", name: "a rule" },
        { id: "g1", name: "a meter" },
      ],
      findings: [{ item: "electrics.horn", person: "ines", instrument: "g1", note: "silent" }],
    },
  }),
);

test("each entry that may be laid before the dealer is chosen once, and each other is named with why", () => {
  const { chosen, refused } = chooseEntries(compared, [2, 0, 0, 1, 7]);
  expect(chosen.map(({ index }) => index)).toEqual([2, 0]);
  expect(refused).toEqual([
    { place: 3, why: "found-better" },
    { place: 4, why: "no-such-entry" },
  ]);
});

test("what the dealer gets to see says not by whom it was found, and names the instrument", () => {
  const [first] = chooseEntries(compared, [0]).chosen;
  expect(first?.snapshot.b).toEqual({ item: "electrics.horn", note: "silent", instrumentName: "a meter" });
  expect(first?.snapshot.a).toEqual({ item: "electrics.horn", instrumentName: null });
  expect(chooseEntries(compared, [2]).chosen[0]?.snapshot.a).toBeNull();
});

test("what the dealer gets to see tells nothing that the rest of the inspection has a part in", () => {
  const figures = { of: "reading", difference: 3, qValue: 0.04 };
  const [marked] = compared.comparison.entries;
  const told: Compared = JSON.parse(
    JSON.stringify({
      ...compared,
      comparison: { entries: [{ ...marked, figures, marks: ["hedged", "only-as-declared"] }] },
    }),
  );
  const entryShown = chooseEntries(told, [0]).chosen[0]?.snapshot.entry;
  expect(entryShown).toEqual({ ...marked, figures: { ...figures, qValue: null }, marks: ["hedged"] });
});
