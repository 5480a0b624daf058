import type { CaseMatter } from "@evenhand/shared/http/cases";
import type { ReleasedMatter } from "@evenhand/shared/http/releases";
import type { Matter } from "@evenhand/shared/matter";
import { matterId } from "@evenhand/shared/matter-id";
import type { SettlementState } from "@evenhand/shared/settlement";
import { severityRank } from "@evenhand/shared/severity";
import { matterOwed, matterState } from "../matter-state/index.ts";

/** A line laid before the dealer, by its index, and the dealer's answer. */
export type ReleasedEntry = {
  readonly entry: number;
  readonly state: SettlementState;
  /** When the next step is due; `null` at an end. */
  readonly deadline: string | null;
};

export type AnswerMatters = {
  readonly comparison: string;
  readonly wrong: readonly Matter[];
  readonly unknown: readonly Matter[];
};

/** What became of them between buyer and dealer: what was laid, and the matters answered for in approving. */
export type Settling = {
  readonly released: readonly ReleasedEntry[];
  readonly answeredFor: ReadonlySet<string>;
};

/**
 * The matters of an answer as a case shows them, in the answer's order.
 *
 * @param settling `null` to whoever is no party to it
 * @example caseMatters({ comparison, wrong: [brakes], unknown: [] }, settling)[0]?.state // "accepted"
 */
export const caseMatters = (
  { comparison, wrong, unknown }: AnswerMatters,
  settling: Settling | null,
): CaseMatter[] =>
  [...wrong, ...unknown].map((matter, place) => {
    const id = matterId(matter);
    const settled = (): CaseMatter["state"] => {
      if (settling === null) return null;
      return settling.answeredFor.has(id) ? "answered-for" : matterState(matter.lines, settling.released);
    };
    return {
      id,
      comparison,
      place,
      severity: matter.severity,
      headline: matter.headline,
      unknown: place >= wrong.length,
      next: matter.next.words,
      lines: matter.lines.length,
      laid:
        settling === null ? 0 : settling.released.filter(({ entry }) => matter.lines.includes(entry)).length,
      state: settled(),
      owed: settling === null ? null : matterOwed(matter.lines, settling.released),
    };
  });

export type ReleasedOf = ReleasedEntry & {
  readonly comparison: string;
  readonly matter: ReleasedMatter | null;
};

/**
 * What was laid before a dealer as matters, worst first: from the released lines alone, whatever else the inspection found.
 *
 * @param released all that lies before the dealer in one case
 * @example releasedCaseMatters([sinkingPedal])[0]?.headline // "The brake pedal sinks"
 */
export const releasedCaseMatters = (released: readonly ReleasedOf[]): CaseMatter[] => {
  const groups = Map.groupBy(released, ({ comparison, matter }) => `${comparison} ${matter?.id ?? ""}`);
  return [...groups.values()]
    .flatMap((lines): CaseMatter[] => {
      const [first] = lines;
      if (first?.matter == null) return [];
      const { comparison } = first;
      const { found, ...matter } = first.matter;
      const indexes = lines.map(({ entry }) => entry);
      const state = matterState(indexes, lines);
      return [
        {
          ...matter,
          comparison,
          place: null,
          unknown: !found,
          next: null,
          lines: lines.length,
          laid: lines.length,
          state,
          owed: matterOwed(indexes, lines),
        },
      ];
    })
    .toSorted((a, b) => severityRank(a.severity) - severityRank(b.severity) || (a.id < b.id ? -1 : 1));
};
