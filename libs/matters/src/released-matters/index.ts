import { isFoundBad } from "@evenhand/comparison/found-bad";
import type { Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { ReleasedFinding, ReleasedMatter } from "@evenhand/shared/http/releases";
import { matterId } from "@evenhand/shared/matter-id";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { inWords } from "../in-words/index.ts";
import { matters } from "../matters/index.ts";

/** A line laid before the dealer: the two answers, and what came of setting them against each other. */
export type ReleasedLine = {
  readonly entry: Entry;
  readonly a: ReleasedFinding | null;
  readonly b: ReleasedFinding | null;
};

const findingOf = ({ instrumentName: _name, ...finding }: ReleasedFinding): Finding => finding;

/** One side's answers as a report that says nothing else, and where in it each line's answer stands. */
const sideOf = (lines: readonly ReleasedLine[], side: "a" | "b") => {
  const findings: Finding[] = [];
  const at = lines.map((line) => {
    const said = line[side];
    return said === null ? null : findings.push(findingOf(said)) - 1;
  });
  return { report: { findings, scales: [] }, at };
};

/**
 * The matter each released line belongs to, as the dealer may know it: joined and worded from the released lines alone, so that
 * nothing of what was not released can show in it. Laying more before the dealer can change what a matter is called.
 *
 * @param lines all lines of one comparison that are laid before the dealer
 * @returns one for each line, in their order; `null` for a line that is of no matter
 * @example releasedMatters([sinkingPedal], sheet) // [{ id: "brakes", severity: "danger", headline: "The brake pedal sinks", found: true }]
 */
export const releasedMatters = (
  lines: readonly ReleasedLine[],
  sheet: CompiledSheet,
): (ReleasedMatter | null)[] => {
  const [a, b] = [sideOf(lines, "a"), sideOf(lines, "b")];
  const entries = lines.map(({ entry }, index): Entry => ({
    ...entry,
    finding: { a: a.at[index] ?? null, b: b.at[index] ?? null },
  }));
  const of = new Map<number, ReleasedMatter>();
  const reports = { a: a.report, b: b.report, sheet };
  for (const matter of matters({ entries, crossChecks: [] }, reports)) {
    const { severity, headline } = inWords(matter, reports);
    const found = matter.lines.some((line) => lines[line] !== undefined && isFoundBad(lines[line].entry));
    for (const line of matter.lines) of.set(line, { id: matterId(matter), severity, headline, found });
  }
  return lines.map((_line, index) => of.get(index) ?? null);
};
