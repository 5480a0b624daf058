import type { Certainty, Matter } from "./matter.ts";
import { matterId } from "./matter-id.ts";
import type { Answer, AnswerCost, AnsweredMatter } from "./page-one.ts";

/**
 * What somebody measured or saw is shown alike, for a worn tire that was measured does not stand before a rail seen to be rotten; what was
 * said, is in doubt or unknown stands behind it, each by itself.
 *
 * @example shownAs("measured") // "seen"
 */
export const shownAs = (certainty: Certainty): Certainty => (certainty === "measured" ? "seen" : certainty);

/** Whether two matters stand beside each other for nothing but the order of the kinds. */
const areAlike = (one: Matter, other: Matter): boolean =>
  one.severity === other.severity &&
  one.admitted === other.admitted &&
  shownAs(one.certainty) === shownAs(other.certainty);

/** Matters that follow each other and are as grave, as sure and as much admitted. */
const runsOf = (matters: readonly AnsweredMatter[]): AnsweredMatter[][] => {
  const runs: AnsweredMatter[][] = [];
  for (const one of matters) {
    const last = runs.at(-1);
    if (last?.[0] !== undefined && areAlike(last[0].matter, one.matter)) last.push(one);
    else runs.push([one]);
  }
  return runs;
};

/**
 * Page one for whoever keeps a table of costs: of matters that are as grave and as sure the dearer stands first. What is stored knows
 * no table, so that two readers of one comparison hold the same bytes.
 *
 * @param priced `null` or absent where the reader keeps no table: as it is stored
 * @example dearerFirst(answer, cost).matters.map(({ matter }) => matter.kind) // ["engine-wear", "paint"]
 */
export const dearerFirst = <Page extends Pick<Answer, "matters">>(
  answer: Page,
  priced: AnswerCost | null | undefined,
): Page => {
  const cost = priced?.cost ?? null;
  if (cost === null) return answer;
  const likely = new Map(cost.byMatter.map((one) => [one.matter, one.likely]));
  const costOf = ({ matter }: AnsweredMatter): number => likely.get(matterId(matter)) ?? 0;
  const matters = runsOf(answer.matters).flatMap((run) => run.toSorted((a, b) => costOf(b) - costOf(a)));
  return { ...answer, matters };
};
