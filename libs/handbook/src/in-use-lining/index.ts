import type { RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { atLeast, measured } from "../in-use/index.ts";
import { inUseLiningRecord } from "./record.ts";

export type InUseLiningInput = {
  /** in */
  readonly reading: Estimate;
  readonly fixing: "riveted" | "bonded" | "unknown";
};

/**
 * Brake lining in use: not less than 1/32 in, over the fastener where riveted, over the shoe where bonded; equality
 * passes. Where the fixing is not known it is not known what was measured.
 *
 * Source: 49 CFR 570.5(g), from memory; the riveted figure read in 570.59(c), which has 1/16 in for bonded linings of heavier vehicles. Local inspection law decides.
 *
 * @param reading in
 * @example inUseLining(exactly(0.03), "riveted").reason // "under-limit"
 */
export const inUseLining = (reading: Estimate, fixing: "riveted" | "bonded" | "unknown"): RuleResult =>
  fixing === "unknown"
    ? inUseLiningRecord.answer("fixing-unknown", { figures: { reading: measured(reading, "in") } })
    : atLeast(inUseLiningRecord.answer, reading, inUseLiningRecord.limit(`in-use.lining-${fixing}`));
