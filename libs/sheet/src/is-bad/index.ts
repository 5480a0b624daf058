import type { Answer } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import { isBadCall } from "@evenhand/shared/severity";
import type { Item } from "@evenhand/shared/sheet";
import { callOf } from "../call/index.ts";
import type { CallContext } from "../call/index.ts";

/**
 * Whether an answer says that the thing is bad, however grave: `callOf` says how.
 *
 * @param scales the scales of the report the answer stands in; needed only for grades on other scales than the house's
 * @example
 * isBad({ kind: "working", value: "intermittent" }, horn); // true
 */
export function isBad(
  answer: Answer,
  item: Item,
  scales: readonly GradeScale[] = [],
  context: CallContext = {},
): boolean {
  return isBadCall(callOf(answer, item, { ...context, scales }));
}
