import type { RuleResult } from "@evenhand/shared/cross-check";
import { figure } from "../rule-result/index.ts";
import { odometerDisclosureRecord } from "./record.ts";

export type OdometerDisclosureInput = {
  readonly modelYear?: number;
  readonly transferYear?: number;
  /** Gross vehicle weight rating, lb. */
  readonly weightRating?: number;
  /** Trailers are not. */
  readonly selfPropelled?: boolean;
  /** Somebody says that no disclosure is needed. */
  readonly claimedExempt?: boolean;
};

/** Model years from which the longer time applies. */
const LATE_FROM = 2011;

/**
 * Whether an odometer disclosure is due on transfer, as a reminder and never as advice: state law may ask for
 * more, and an exempt mileage is not a verified one.
 *
 * Source: 49 CFR 580.17(a): model years up to 2010 exempt from ten years after, from 2011 from twenty years after;
 * over 16,000 lb or not self-propelled exempt. That is the rule of transfers today. For transfers before 2021 the rule of
 * that day had ten years for every model year (from memory), which comes to the same: no model year from 2011 on was ten years
 * old then.
 *
 * @example odometerDisclosure({ modelYear: 2010, transferYear: 2019 }).reason // "due"
 * @example odometerDisclosure({ modelYear: 1964, transferYear: 2026 }).reason // "exempt-by-age"
 */
export const odometerDisclosure = (input: OdometerDisclosureInput): RuleResult => {
  const { modelYear, transferYear, weightRating, selfPropelled, claimedExempt } = input;
  const weight = odometerDisclosureRecord.limit("disclosure.weight");
  if (selfPropelled === false || (weightRating !== undefined && weightRating > weight.value)) {
    return odometerDisclosureRecord.answer("exempt-by-kind", { limits: [weight] });
  }
  if (modelYear === undefined || transferYear === undefined)
    return odometerDisclosureRecord.answer("too-few");
  const years = odometerDisclosureRecord.limit(
    modelYear >= LATE_FROM ? "disclosure.late-years" : "disclosure.early-years",
  );
  const detail = {
    figures: {
      modelYear: figure(modelYear, "a"),
      transferYear: figure(transferYear, "a"),
      exemptFrom: figure(modelYear + years.value, "a"),
    },
    limits: [years],
  };
  if (transferYear >= modelYear + years.value)
    return odometerDisclosureRecord.answer("exempt-by-age", detail);
  return odometerDisclosureRecord.answer(claimedExempt === true ? "claimed-exempt-but-due" : "due", detail);
};
