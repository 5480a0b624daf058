import { isHandOverDiscrepancy } from "@evenhand/shared/hand-over";
import type { HandOverComparison, HandOverKind, HandOverLine } from "@evenhand/shared/hand-over";
import type { HandOverCompared, HandOverLineSeen } from "@evenhand/shared/http/hand-overs";
import type { Report } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { unseenInWords } from "../hand-over-reading/index.ts";
import { handOverWords } from "../hand-over-words/index.ts";

const OPEN: ReadonlySet<HandOverKind> = new Set(["perhaps", "cannot-say"]);

/** Counted or read, and not to be seen in a picture of a place. Common practice, no source. */
const UNPICTURED: ReadonlySet<string> = new Set([
  "identity.odometer",
  "identity.fuel-level",
  "identity.key-count",
]);

const isOther = (line: HandOverLine): boolean => !isHandOverDiscrepancy(line) && !OPEN.has(line.kind);

/**
 * Two hand-over reports compared, in words: what both can tell, what they leave open, and what nobody looked at.
 *
 * @example comparedInWords(comparison, { collection, delivery }, transportSheet1).discrepancies[0]?.place
 * // "panel damage, left front door"
 */
export const comparedInWords = (
  comparison: HandOverComparison,
  reports: { readonly collection: Report; readonly delivery: Report },
  sheet: Sheet,
): HandOverCompared => {
  const seen = (line: HandOverLine): HandOverLineSeen => ({
    kind: line.kind,
    item: line.item,
    position: line.position,
    severity: line.severity,
    pictured: !UNPICTURED.has(line.item),
    ...handOverWords(line, reports, sheet, comparison),
  });
  const { lines, unseen, lookedAtTwice, places } = comparison;
  return {
    discrepancies: lines.filter(isHandOverDiscrepancy).map(seen),
    open: lines.filter(({ kind }) => OPEN.has(kind)).map(seen),
    others: lines.filter(isOther).map(seen),
    unseen: unseenInWords(unseen, reports.delivery, sheet),
    lookedAtTwice,
    places,
  };
};
