import type { Report } from "@evenhand/shared/report";

type Named = Pick<Report, "instruments" | "persons" | "scales">;

const more = <T extends { readonly id: string }>(before: readonly T[], begun: readonly T[]): T[] => {
  const known = new Set(before.map(({ id }) => id));
  return [...before, ...begun.filter(({ id }) => !known.has(id))];
};

/**
 * What findings refer to by name, where a report goes on with those of an earlier one: everything the earlier one names, so that
 * each finding says what it said, and what the new one names beside it.
 *
 * @example carriedHeader({ persons: [ines], … }, { persons: [ines, rowan], … }).persons // [ines, rowan]
 */
export const carriedHeader = (before: Named, begun: Named): Named => ({
  instruments: more(before.instruments, begun.instruments),
  persons: more(before.persons, begun.persons),
  scales: more(before.scales, begun.scales),
});
