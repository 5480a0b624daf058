import type { Finding } from "@evenhand/shared/finding";

/** How people wrote that a car has none of it while the sheet had no answer for that. */
const NONE =
  /\b(none fitted|not fitted|has none|had none|never had|never fitted|none on this|no such|king pins|trunnions|rod brakes|hand signals|no heater|blanking plate|one stop lamp when new|none, \d{4})\b|^none\.?$/i;

/**
 * A finding of a report from before "not fitted" was an answer: "not tested" with a note that the car has none says just that.
 * Everything else stays as it is.
 *
 * @example asNotFitted({ ...finding, answer: { kind: "not-seen", reason: "not-tested" }, note: "none fitted" }).answer.kind // "not-fitted"
 */
export const asNotFitted = (finding: Finding): Finding =>
  finding.answer.kind === "not-seen" &&
  finding.answer.reason === "not-tested" &&
  NONE.test(finding.note ?? "")
    ? { ...finding, answer: { kind: "not-fitted" } }
    : finding;
