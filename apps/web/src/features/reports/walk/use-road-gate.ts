import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { useQuery } from "@tanstack/react-query";
import { positionWords, type SheetIndex } from "../../../entities/sheet/sheet-index";
import type { Draft } from "../../../offline/use-draft";

const gateQuery = {
  queryKey: ["road-gate"],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async () => {
    const [{ roadGate, roadDoubts }, { compileSheet }] = await Promise.all([
      import("@evenhand/handbook/road-gate"),
      import("@evenhand/sheet/compile-sheet"),
    ]);
    return { roadGate, roadDoubts, compileSheet };
  },
} as const;

/** What is found or doubted of going out on the road, by this report alone. */
export interface RoadGate {
  /** Names of what keeps the car off the road. */
  readonly closedBy: readonly string[];
  /** The inspector's doubts, in their words. */
  readonly doubts: readonly string[];
  /** One or the other keeps the car off the road. */
  readonly isShut: boolean;
}

/** @returns nothing until it is known */
export const useRoadGate = (
  report: Report,
  index: SheetIndex,
  findings: Draft["findings"],
): RoadGate | undefined => {
  const gate = useQuery(gateQuery).data;
  if (gate === undefined) return undefined;
  const own = [...findings.values()].flatMap(({ finding }): Finding[] => (finding === null ? [] : [finding]));
  const draft = { ...report, findings: own };
  const sheet = gate.compileSheet(index.sheet);
  const closedBy = gate.roadGate(draft, sheet).map(({ item, position }) => {
    const found = index.items.get(item);
    const place = positionWords(index, found, position);
    return [found?.words.american ?? item, place].filter((part) => part !== "").join(", ");
  });
  const doubts = closedBy.length > 0 ? [] : gate.roadDoubts(draft, sheet).map(({ words }) => words);
  return {
    closedBy: [...new Set(closedBy)],
    doubts: [...new Set(doubts)],
    isShut: closedBy.length + doubts.length > 0,
  };
};
