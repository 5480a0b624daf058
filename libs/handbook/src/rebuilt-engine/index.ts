import type { FirmLimits, RuleResult, Verdict } from "@evenhand/shared/cross-check";
import { lowAgainstOthers } from "../compression/index.ts";
import type { CylinderPressure } from "../compression/index.ts";
import { judge, worstVerdict } from "../interval/index.ts";
import type { CylinderLeak } from "../leak-down/index.ts";
import { figure } from "../rule-result/index.ts";
import { rebuiltEngineRecord } from "./record.ts";

export type RebuiltEngineInput = {
  /** psi, warm, throttle open. */
  readonly pressures?: readonly CylinderPressure[];
  /** %, at 100 psi. */
  readonly leaks?: readonly CylinderLeak[];
  /** Blue smoke with the engine warm. */
  readonly smokes?: boolean;
};

const extremes = ({ pressures = [], leaks = [] }: RebuiltEngineInput) => {
  const sorted = pressures.toSorted((a, b) => a.pressure.value - b.pressure.value);
  const [lowest, highest] = [sorted[0], sorted.at(-1)];
  const worst = leaks.toSorted((a, b) => b.leak.value - a.leak.value)[0];
  return {
    ...(lowest === undefined || highest === undefined
      ? {}
      : {
          lowest: figure(lowest.pressure.value, "psi", lowest.pressure.standardUncertainty),
          lowestCylinder: figure(lowest.cylinder),
          highest: figure(highest.pressure.value, "psi", highest.pressure.standardUncertainty),
        }),
    ...(worst === undefined
      ? {}
      : {
          worst: figure(worst.leak.value, "%", worst.leak.standardUncertainty),
          worstCylinder: figure(worst.cylinder),
        }),
  };
};

/**
 * An engine called rebuilt, against itself: the level of its compression, its spread, leak-down and smoke. Evenly tired is
 * tired: the spread alone would call 60 psi all round a good engine.
 *
 * Source: common practice, no source.
 *
 * @example
 * rebuiltEngine({ pressures: [150, 140, 155, 90].map((psi, i) => ({ cylinder: i + 1, pressure: estimate(psi, 2) })) }).reason
 * // "failed-cylinder"
 */
export const rebuiltEngine = (input: RebuiltEngineInput, firm: FirmLimits = {}): RuleResult => {
  const { pressures = [], leaks = [], smokes } = input;
  const [least, uneven, failed, leaking] = [
    rebuiltEngineRecord.limit("rebuilt.least", firm),
    rebuiltEngineRecord.limit("rebuilt.uneven", firm),
    rebuiltEngineRecord.limit("rebuilt.failed", firm),
    rebuiltEngineRecord.limit("rebuilt.leaks", firm),
  ];
  const against = (share: number): Verdict => worstVerdict([...lowAgainstOthers(pressures, share).values()]);
  const calls = [
    ["failed-cylinder", against(failed.value)],
    [
      "tired",
      worstVerdict(pressures.map(({ pressure }) => judge(pressure, { low: least.value }, pressures.length))),
    ],
    ["uneven", against(uneven.value)],
    ["leaks", worstVerdict(leaks.map(({ leak }) => judge(leak, { high: leaking.value }, leaks.length)))],
    ["smokes", smokes === true ? "breaks" : "holds"],
  ] as const;
  const detail = { figures: extremes(input), limits: [least, uneven, failed, leaking] };
  const broken = calls.find(([, verdict]) => verdict === "breaks");
  if (broken !== undefined) return rebuiltEngineRecord.answer(broken[0], detail);
  if (pressures.length < 2) return rebuiltEngineRecord.answer("too-few", detail);
  const clear = calls.every(([, verdict]) => verdict === "holds");
  return rebuiltEngineRecord.answer(clear ? "no-contradiction" : "range-covers", detail);
};
