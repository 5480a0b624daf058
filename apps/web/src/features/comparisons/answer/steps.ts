import type { AnsweredMatter } from "@evenhand/shared/page-one";
import type { NextStep } from "@evenhand/shared/matter";

/** One thing to do, and the matters it is for, by their numbers on the page. */
export interface Step {
  readonly step: NextStep;
  readonly words: string;
  /** What looking takes over all of them; `null` where looking is not the step. */
  readonly minutes: number | null;
  readonly matters: readonly {
    readonly number: number;
    readonly headline: string;
    readonly question: string;
  }[];
}

/**
 * What to do next, each step once, in the order of the gravest matter that asks for it. Trifles ask for nothing while anything else does.
 *
 * @param matters as they are numbered on the page, from 1
 * @example stepsOf([title, brakes, lien]).map(({ step }) => step) // ["see-paper", "do-not-drive"]
 */
export const stepsOf = (matters: readonly AnsweredMatter[]): readonly Step[] => {
  const numbered = matters.map(({ matter }, index) => ({ matter, number: index + 1 }));
  const weighty = numbered.filter(({ matter }) => matter.severity !== "small");
  const groups = Map.groupBy(weighty.length > 0 ? weighty : numbered, ({ matter }) => matter.next.step);
  return [...groups].map(([step, group]) => {
    const minutes = group.reduce((sum, { matter }) => sum + (matter.next.minutes ?? 0), 0);
    return {
      step,
      words: group[0]?.matter.next.words ?? "",
      minutes: minutes === 0 ? null : minutes,
      matters: group.map(({ matter, number }) => ({
        number,
        headline: matter.headline,
        question: matter.question,
      })),
    };
  });
};
