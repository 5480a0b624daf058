import type { Comparison } from "@evenhand/shared/comparison";
import type { Matter } from "@evenhand/shared/matter";
import type { JudgedMatter } from "./read.ts";

/** What a judge would have telephoned, and where it stands in the matters. */
export type MatterSought = {
  readonly name: string;
  readonly headline: string;
  /** From 0; `null` where no matter holds a line of it. */
  readonly place: number | null;
};
export type MattersScore = {
  readonly sought: readonly MatterSought[];
  /** The first of either judgment stands first; `null` where nobody judged matters. */
  readonly first: boolean | null;
};

const TELEPHONED = 12;

/** Whether a judge's matter stands among the first twelve. */
export const isHit = ({ place }: MatterSought): boolean => place !== null && place < TELEPHONED;

const placesOf = (matter: Pick<Matter, "lines">, { entries }: Comparison): ReadonlySet<string> =>
  new Set(
    matter.lines.flatMap((index) => entries[index] ?? []).map(({ item, position }) => `${item}@${position}`),
  );

/**
 * Where each judge's matters stand: the first matter of which one line speaks of one of its places. What the sheet could not say is
 * no place, and a judgment of such alone is not counted.
 */
export const scoreMatters = (
  name: string,
  judgments: readonly (readonly JudgedMatter[])[],
  found: readonly Pick<Matter, "lines">[],
  comparison: Comparison,
): MattersScore => {
  const held = found.map((matter) => placesOf(matter, comparison));
  const placeOf = ({ places }: JudgedMatter): number | null => {
    const at = held.findIndex((of) => places.some(({ item, position }) => of.has(`${item}@${position}`)));
    return at === -1 ? null : at;
  };
  const counted = judgments.map((judgment) => judgment.filter(({ places }) => places.length > 0));
  return {
    sought: counted.flat().map((matter) => ({ name, headline: matter.headline, place: placeOf(matter) })),
    first: counted.some((judgment) => judgment.length > 0)
      ? counted.some(([first]) => first !== undefined && placeOf(first) === 0)
      : null,
  };
};
