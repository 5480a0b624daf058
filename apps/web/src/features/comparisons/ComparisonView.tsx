import type { Answer, AnswerCost, AnsweredMatter } from "@evenhand/shared/page-one";
import { dearerFirst } from "@evenhand/shared/dearer-first";
import { lazy, type ReactNode, Suspense, useCallback, useMemo, useRef } from "react";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Tabs } from "../../ui/Tabs";
import { isKind, useAccount } from "../../entities/account/queries";
import type { Choosing } from "../../entities/comparison/choosing";
import { AnswerView } from "./answer/AnswerView";
import styles from "./ComparisonView.module.css";
import { noFilter } from "./filters";
import { listedOf } from "./listed-of";
import { viewOf, type ComparisonSearch } from "./search";

/** The lines bring every rule's words along: nobody waits for them before the answer. */
const Behind = lazy(async () => ({ default: (await import("./Behind")).Behind }));

interface Props {
  readonly id: string;
  readonly answer: Answer;
  /** Absent for whoever is shown none. */
  readonly cost?: AnswerCost;
  readonly search: ComparisonSearch;
  readonly onSearch: (change: Partial<ComparisonSearch>) => void;
  readonly choosing?: Choosing;
  readonly before?: ReactNode;
  readonly onLay?: (at: number) => void;
  readonly settling?: (one: AnsweredMatter) => ReactNode;
}

const useTabs = ({ tally, broken }: Answer) => {
  const t = useText();
  return [
    { value: "answer", label: t("comparison.view.answer") },
    { value: "items", label: t("comparison.view.items", { count: listedOf(tally) }) },
    { value: "whole", label: t("comparison.view.whole") },
    { value: "checks", label: t("comparison.view.checks", { count: broken }) },
  ] as const;
};

const mattersOf = ({ matters, unknown }: Answer): readonly AnsweredMatter[] => [...matters, ...unknown];

/** The comparison: the answer first; behind it the lines, the figures over the whole, and the rules. */
export const ComparisonView = (props: Props) => {
  const t = useText();
  const { id, answer, cost, search, onSearch, before, settling } = props;
  const buys = isKind(useAccount(), "buyer");
  const view = viewOf(search);
  const tabs = useTabs(answer);
  const goTo = useRef<number | null>(null);
  const open = useCallback(
    (at: number): void => {
      goTo.current = at;
      onSearch({ ...noFilter, view: "items", open: at });
    },
    [onSearch],
  );
  const shown = useMemo(() => dearerFirst(answer, cost), [answer, cost]);
  const onMatter = useCallback(
    (number: number): void => {
      const one = mattersOf(shown)[number];
      // The lines go by the matter's place in what is stored, which no table of costs changes.
      if (one !== undefined) onSearch({ ...noFilter, view: "items", matter: mattersOf(answer).indexOf(one) });
    },
    [onSearch, shown, answer],
  );
  return (
    <div className={styles.view}>
      {before}
      <Tabs
        label={t("comparison.views")}
        value={view}
        onChange={(next) => onSearch({ view: next })}
        tabs={tabs}
      >
        {view === "answer" ? (
          <AnswerView
            answer={shown}
            cost={cost}
            onOpen={open}
            onMatter={onMatter}
            comparison={id}
            buys={buys}
            settling={settling}
          />
        ) : (
          <Suspense fallback={<Loading />}>
            <Behind {...props} view={view} onOpen={open} goTo={goTo} />
          </Suspense>
        )}
      </Tabs>
    </div>
  );
};
