import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import { difference } from "@evenhand/measurement/difference";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { squareRecord } from "./record.ts";

/** Two lengths that ought to be equal, mm. */
export type LengthPair = readonly [Estimate, Estimate];
export type SquareInput = { readonly wheelbase?: LengthPair; readonly diagonals?: LengthPair };

/**
 * Square: wheelbase left against right and the two diagonals against each other, beyond their uncertainty and the
 * limit. It asks about collision repair; it does not show one.
 *
 * Source: common practice, no source.
 *
 * @example square({ wheelbase: [exactly(2743), exactly(2731)] }).reason // "wheelbase-differs"
 */
export const square = ({ wheelbase, diagonals }: SquareInput, firm: FirmLimits = {}): RuleResult => {
  const limit = squareRecord.limit("square.difference", firm);
  const pairs = Object.entries({ wheelbase, diagonals }).flatMap(([name, pair]) =>
    pair === undefined ? [] : [{ name, difference: difference(...pair) }],
  );
  const figures = Object.fromEntries(
    pairs.map(({ name, difference: { value, standardUncertainty } }) => [
      name,
      figure(Math.abs(value), "mm", standardUncertainty),
    ]),
  );
  const detail = { figures, limits: [limit] };
  if (pairs.length === 0) return squareRecord.answer("too-few", detail);
  const zone = { low: -limit.value, high: limit.value };
  const judged = new Map(
    pairs.map(({ name, difference: apart }) => [name, judge(apart, zone, pairs.length)]),
  );
  if (judged.get("wheelbase") === "breaks") return squareRecord.answer("wheelbase-differs", detail);
  if (judged.get("diagonals") === "breaks") return squareRecord.answer("diagonals-differ", detail);
  return squareRecord.answer(
    [...judged.values()].every((verdict) => verdict === "holds") ? "square" : "range-covers",
    detail,
  );
};
