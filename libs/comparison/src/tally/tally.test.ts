import { expect, it } from "vitest";
import { entry } from "../../testing/small-entries.ts";
import { tallyOf } from "./index.ts";

it("counts outcomes and standings, each kind from 0", () => {
  const { tally, standings } = tallyOf([entry(), entry(), entry({ outcome: "differ", standing: "differs" })]);
  expect(tally).toEqual({
    agree: 2,
    consistent: 0,
    doubtful: 0,
    differ: 1,
    unseen: 0,
    unstated: 0,
    incomparable: 0,
  });
  expect(standings).toMatchObject({ confirmed: 2, differs: 1, "in-doubt": 0 });
  expect(Object.keys(standings)).toHaveLength(10);
});

it("leaves to coverage what was seen, sound and not stated, unless a rule contradicts it", () => {
  const sound = entry({ outcome: "consistent", standing: "not-mentioned", coverageOnly: true });
  const { tally, standings } = tallyOf([sound, { ...sound, standing: "contradicted-by-figures" }]);
  expect(tally.consistent).toBe(0);
  expect(standings).toMatchObject({ "not-mentioned": 0, "contradicted-by-figures": 1 });
});
