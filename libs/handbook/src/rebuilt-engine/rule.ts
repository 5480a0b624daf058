import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { isBandsPressure } from "../leak-down/index.ts";
import { compressionOf, leaksOf } from "../readers/cylinders.ts";
import { oilPressuresOf } from "../readers/oil-pressures.ts";
import { findClaim, findRead, optionOf, optionsOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { rebuiltEngine } from "./index.ts";
import type { RebuiltEngineInput } from "./index.ts";
import { rebuiltEngineRecord } from "./record.ts";

const CLAIMED = ["rebuilt-with-bills", "rebuilt", "top-end"];

const find = (view: View): Inputs<RebuiltEngineInput>[] => {
  const claim = findClaim(view, "choice", "engine.rebuild-claim");
  if (claim === undefined || !CLAIMED.includes(optionOf(claim) ?? "")) return [];
  const [pressures, leaks] = [compressionOf(view), leaksOf(view)];
  const smoke = findRead(view, "choice", "engine.smoke-warm");
  const blowBy = findRead(view, "choice", "engine.blow-by");
  const oil = oilPressuresOf(view);
  const measured = leaks !== undefined && isBandsPressure(leaks.input.testPressure, view.firm);
  const reads = [
    ...(pressures?.reads ?? []),
    ...(measured ? leaks.reads : []),
    ...oil.map(({ read }) => read),
    ...(smoke === undefined ? [] : [smoke]),
    ...(blowBy === undefined ? [] : [blowBy]),
  ];
  if (reads.length === 0) return [];
  return [
    {
      reads,
      claim,
      input: {
        pressures: pressures?.input.cylinders,
        leaks: measured ? leaks.input.cylinders : undefined,
        levelCounts: pressures?.input.levelCounts,
        oil: oil.map(({ input }) => input),
        smokes: optionsOf(smoke).includes("blue"),
        blowsBy: optionsOf(blowBy).includes("stream"),
      },
    },
  ];
};

/** rebuiltEngine with all that belongs to it. */
export const rebuiltEngineRule = defineRule({
  record: rebuiltEngineRecord,
  compute: rebuiltEngine,
  needs: ["engine.rebuild-claim"],
  find,
  examples,
  trueClaims,
  growth,
});
