import type { RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { atLeast } from "../in-use/index.ts";
import { inUseTreadRecord } from "./record.ts";

/** 1/32 in */
export type InUseTreadInput = { readonly reading: Estimate };

/**
 * Tread depth in use: not less than 2/32 in anywhere; equality passes. Judge the shallowest reading.
 *
 * Source: 49 CFR 570.9(a), from memory for passenger cars. Local inspection law decides.
 *
 * @param reading 1/32 in
 * @example inUseTread(exactly(2)).reason // "meets"
 */
export const inUseTread = (reading: Estimate): RuleResult =>
  atLeast(inUseTreadRecord.answer, reading, inUseTreadRecord.limit("in-use.tread"));
