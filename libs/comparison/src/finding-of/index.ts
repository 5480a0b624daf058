import type { Finding } from "@evenhand/shared/finding";

/**
 * The finding a line rests on. A list is never asked for what stands before its first: the machine takes -1 for a name, and looks for
 * it twenty times as long as for a number.
 *
 * @param index as a line has it: `null` where that side says nothing; anything below 0 is nothing too
 * @returns `undefined` where there is none
 * @example findingOf(inspection.findings, entry.finding.b)?.answer.kind // "reading"
 */
export const findingOf = (findings: readonly Finding[], index: number | null): Finding | undefined =>
  index === null || index < 0 ? undefined : findings[index];
