import type { Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { severityRank } from "@evenhand/shared/severity";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { settlerOf } from "../readings-to-settle/index.ts";
import type { Settler } from "../readings-to-settle/index.ts";
import { findSharing } from "../sharing/index.ts";
import type { Sharing } from "../sharing/index.ts";
import { worstSeverity } from "../worst-severity/index.ts";

/**
 * What the second side can do about an open entry.
 *
 * - `read-again`: `readings` in all, with what it read with
 * - `use-instrument`: `readings` in all with the item's ordinary instrument, since it was read by eye
 * - `read-on-one-day`: both sides on one day, since it drifts
 * - `read-code-again`: it was probably misread
 * - `look-again`: nothing here is a matter of readings
 * - `finer-instrument`: no number of readings with an ordinary instrument would settle it
 */
export type Work =
  "read-again" | "use-instrument" | "read-on-one-day" | "read-code-again" | "look-again" | "finer-instrument";

export type WorklistRow = {
  /** Index of the entry. */
  readonly entry: number;
  readonly work: Work;
  readonly readings: number | null;
  /** What the sheet allows for the item once. */
  readonly minutes: number;
};

type Found = Pick<WorklistRow, "work" | "readings">;

const plain = (work: Work): Found => ({ work, readings: null });

/** The second report as if what was read by eye had been read with the item's ordinary instrument. */
const withOrdinaryInstruments = (report: Report): Report => ({
  ...report,
  instruments: [...report.instruments, { id: "ordinary", name: "the item's ordinary instrument" }],
  findings: report.findings.map((finding) =>
    finding.answer.kind === "reading" && finding.instrument === undefined
      ? { ...finding, instrument: "ordinary" }
      : finding,
  ),
});

const readingWork = (entry: Entry, settle: Settler, settleWithInstrument: Settler, byEye: boolean): Found => {
  if (entry.reason === "changed-between-days") return plain("read-on-one-day");
  const again = settle(entry)?.b ?? null;
  if (again !== null) return { work: "read-again", readings: again };
  const measured = byEye ? (settleWithInstrument(entry)?.b ?? null) : null;
  return measured === null ? plain("finer-instrument") : { work: "use-instrument", readings: measured };
};

const workOf = (entry: Entry, settle: Settler, settleWithInstrument: Settler): Found => {
  const { figures } = entry;
  if (figures?.of === "reading")
    return readingWork(entry, settle, settleWithInstrument, figures.b.byEye || figures.b.unnamed === true);
  return plain(figures?.of === "code" ? "read-code-again" : "look-again");
};

const isOpen = ({ outcome, coverageOnly }: Entry): boolean =>
  outcome === "doubtful" || (outcome === "consistent" && coverageOnly !== true);

/** Where nothing is known to be wrong, what could be. */
const rankAtStake = ({ severity, item, position }: Entry, sheet: CompiledSheet): number => {
  const compiled = sheet.items.get(item);
  const atStake = severity ?? (compiled === undefined ? "small" : worstSeverity(compiled, position));
  return severityRank(atStake);
};

/** What can stop a purchase or hurt somebody first, doubtful before consistent, then by severity. */
const rank = (entry: Entry, sheet: CompiledSheet): number => {
  const atStake = rankAtStake(entry, sheet);
  return (atStake <= severityRank("danger") ? 0 : 100) + (entry.outcome === "doubtful" ? 0 : 10) + atStake;
};

/**
 * What to measure or look at again to settle what is doubtful or only consistent: halt and danger first, doubtful before
 * consistent, then by severity and sheet order.
 *
 * @param entries of `compare(a, b, sheet)`
 * @returns one row for each open entry
 * @example worklist(entries, statement, inspection, sheet)[0] // { entry: 41, work: "read-again", readings: 4, minutes: 2 }
 */
export const worklist = (
  entries: readonly Entry[],
  a: Report,
  b: Report,
  sheet: CompiledSheet,
  sharing: Sharing = findSharing(a, b, {}),
): WorklistRow[] => {
  const settle = settlerOf(a, b, sheet, sharing);
  const settleWithInstrument = settlerOf(a, withOrdinaryInstruments(b), sheet, sharing);
  return Array.from(entries.entries())
    .filter(([, entry]) => isOpen(entry))
    .sort(([first, one], [second, other]) => rank(one, sheet) - rank(other, sheet) || first - second)
    .map(([index, entry]) => ({
      entry: index,
      ...workOf(entry, settle, settleWithInstrument),
      minutes: sheet.items.get(entry.item)?.item.minutes ?? 0,
    }));
};
