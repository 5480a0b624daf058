import type { FirmLimits, RuleResult, Verdict } from "@evenhand/shared/cross-check";
import { lowAgainstOthers } from "../compression/index.ts";
import type { CylinderPressure } from "../compression/index.ts";
import { judge, worstVerdict } from "../interval/index.ts";
import type { CylinderLeak } from "../leak-down/index.ts";
import { oilPressure } from "../oil-pressure/index.ts";
import type { OilPressureInput } from "../oil-pressure/index.ts";
import { figure } from "../rule-result/index.ts";
import { rebuiltEngineRecord } from "./record.ts";

export type RebuiltEngineInput = {
  /** psi, warm, throttle open. */
  readonly pressures?: readonly CylinderPressure[];
  /** %, at 100 psi. */
  readonly leaks?: readonly CylinderLeak[];
  /** The pressures were read warm, with the throttle open, as far as was noted; otherwise their level says nothing. */
  readonly levelCounts?: boolean;
  /** psi, by speed; judged as the rule of oil pressure judges it. */
  readonly oil?: readonly OilPressureInput[];
  /** Blue smoke with the engine warm. */
  readonly smokes?: boolean;
  /** A stream with oil at the filler, and not a breath. */
  readonly blowsBy?: boolean;
};

/** The oil pressure that is certainly low, if one is. */
const lowOil = (oil: readonly OilPressureInput[], firm: FirmLimits): RuleResult | undefined =>
  oil.map((input) => oilPressure(input, firm)).find(({ verdict }) => verdict === "breaks");

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
 * An engine called rebuilt, against itself: the level of its compression, its spread, leak-down, oil pressure, smoke and blow-by. Evenly tired is
 * tired: the spread alone would call 60 psi all round a good engine.
 *
 * Source: common practice, no source.
 *
 * @example
 * rebuiltEngine({ pressures: [150, 140, 155, 90].map((psi, i) => ({ cylinder: i + 1, pressure: estimate(psi, 2) })) }).reason
 * // "failed-cylinder"
 */
export const rebuiltEngine = (input: RebuiltEngineInput, firm: FirmLimits = {}): RuleResult => {
  const { pressures = [], leaks = [], levelCounts = true, oil = [], smokes, blowsBy } = input;
  const [least, uneven, failed, leaking] = [
    rebuiltEngineRecord.limit("rebuilt.least", firm),
    rebuiltEngineRecord.limit("rebuilt.uneven", firm),
    rebuiltEngineRecord.limit("rebuilt.failed", firm),
    rebuiltEngineRecord.limit("rebuilt.leaks", firm),
  ];
  const low = lowOil(oil, firm);
  const against = (share: number): Verdict => worstVerdict([...lowAgainstOthers(pressures, share).values()]);
  const calls = [
    ["failed-cylinder", against(failed.value)],
    [
      "tired",
      levelCounts
        ? worstVerdict(
            pressures.map(({ pressure }) => judge(pressure, { low: least.value }, pressures.length)),
          )
        : "holds",
    ],
    ["uneven", against(uneven.value)],
    ["leaks", worstVerdict(leaks.map(({ leak }) => judge(leak, { high: leaking.value }, leaks.length)))],
    ["low-oil", low === undefined ? "holds" : "breaks"],
    ["smokes", smokes === true ? "breaks" : "holds"],
    ["blows-by", blowsBy === true ? "breaks" : "holds"],
  ] as const;
  const detail = {
    figures: { ...low?.figures, ...extremes(input) },
    limits: [least, uneven, failed, leaking],
  };
  const broken = calls.find(([, verdict]) => verdict === "breaks");
  if (broken !== undefined) return rebuiltEngineRecord.answer(broken[0], detail);
  if (pressures.length < 2) return rebuiltEngineRecord.answer("too-few", detail);
  const clear = calls.every(([, verdict]) => verdict === "holds");
  return rebuiltEngineRecord.answer(clear ? "no-contradiction" : "range-covers", detail);
};
