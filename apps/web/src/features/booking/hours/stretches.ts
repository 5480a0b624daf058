import type { DayExplained } from "@evenhand/shared/http/booking";

type Hour = DayExplained["hours"][number];

/** From one start to another, alike in what is in the way. */
export interface Stretch {
  readonly first: Hour;
  readonly last: Hour;
}

const signature = ({ offeredBy, site, inspectors }: Hour): string =>
  JSON.stringify([
    offeredBy.toSorted(),
    site.map(({ code }) => code),
    inspectors.map(({ inspector, reasons }) => [inspector, reasons.map(({ code }) => code)]),
  ]);

/** Starts that follow each other with the same in the way are said once: for all of them stand the reasons, and so the figures, of the first. */
export const stretchesOf = (hours: readonly Hour[]): readonly Stretch[] => {
  const stretches: Stretch[] = [];
  for (const hour of hours) {
    const before = stretches.at(-1);
    if (before && signature(before.first) === signature(hour)) {
      stretches[stretches.length - 1] = { first: before.first, last: hour };
    } else stretches.push({ first: hour, last: hour });
  }
  return stretches;
};
