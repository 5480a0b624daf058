import type { Outcome } from "@evenhand/shared/outcome";
import { useMediaQuery } from "@mantine/hooks";
import { useMemo, type ReactNode } from "react";
import { useText } from "../../strings/text";
import { Empty } from "../../ui/Page";
import { Tabs } from "../../ui/Tabs";
import { AnswerView } from "./answer/AnswerView";
import { Checks } from "./Checks";
import styles from "./ComparisonView.module.css";
import type { Choosing } from "../../entities/comparison/choosing";
import { FacingPages } from "./FacingPages";
import { Filters } from "./Filters";
import { isFiltered, visibleRows } from "./filters";
import { comparisonRows, type ComparisonSource } from "../../entities/comparison/model";
import { viewOf, type ComparisonSearch } from "./search";
import { useOpenLine } from "./use-open-line";
import { CarPlan } from "./plan/CarPlan";
import { Tally } from "./Tally";
import { WholeReport } from "./whole/WholeReport";

interface Props {
  readonly source: ComparisonSource;
  readonly search: ComparisonSearch;
  readonly onSearch: (change: Partial<ComparisonSearch>) => void;
  readonly choosing?: Choosing;
  readonly before?: ReactNode;
}

const none: Partial<ComparisonSearch> = {
  outcome: undefined,
  standing: undefined,
  severity: undefined,
  section: undefined,
  station: undefined,
  q: undefined,
};

const toggled = (list: readonly Outcome[], outcome: Outcome): Outcome[] | undefined => {
  const next = list.includes(outcome) ? list.filter((one) => one !== outcome) : [...list, outcome];
  return next.length === 0 ? undefined : next;
};

/** Beside the pages where there is room; folded above them where there is not. */
const Rail = ({ filtered, children }: { readonly filtered: boolean; readonly children: ReactNode }) => {
  const t = useText();
  const wide = useMediaQuery("(min-width: 1101px)", true, { getInitialValueInEffect: false });
  return (
    <aside className={`${styles.rail} no-print`} aria-label={t("filter.label")}>
      {wide ? (
        <div className={styles.controls}>{children}</div>
      ) : (
        <details open={filtered || undefined}>
          <summary>{t("filter.fold")}</summary>
          <div className={styles.controls}>{children}</div>
        </details>
      )}
    </aside>
  );
};

/** The comparison: the answer first; behind it counts, plan, filters, the facing pages, the figures over the whole, and the rules. */
export const ComparisonView = ({ source, search, onSearch, choosing, before }: Props) => {
  const t = useText();
  const rows = useMemo(() => comparisonRows(source), [source]);
  const shown = visibleRows(rows, search);
  const listed = rows.filter(({ entry }) => entry.coverageOnly !== true);
  const counted = visibleRows(rows, { ...search, outcome: undefined });
  const counts: Partial<Record<Outcome, number>> = {};
  for (const { entry } of counted) counts[entry.outcome] = (counts[entry.outcome] ?? 0) + 1;
  const used = new Set(rows.map(({ section }) => section?.id));
  const view = viewOf(search);
  const goToLine = useOpenLine(view === "items" ? search.open : undefined);
  const open = (at: number): void => {
    goToLine(at);
    onSearch({ ...none, view: "items", open: at });
  };
  const onLines = (change: Partial<ComparisonSearch>): void => onSearch({ view: "items", ...change });
  const broken = source.comparison.crossChecks.filter(({ verdict }) => verdict === "breaks").length;
  return (
    <div className={styles.view}>
      {view !== "answer" && (
        <Tally
          counts={counts}
          selected={search.outcome ?? []}
          onToggle={(outcome) => onLines({ outcome: toggled(search.outcome ?? [], outcome) })}
        />
      )}
      {before}
      <Tabs
        label={t("comparison.views")}
        value={view}
        onChange={(next) => onSearch({ view: next })}
        tabs={[
          { value: "answer", label: t("comparison.view.answer") },
          { value: "items", label: t("comparison.view.items", { count: listed.length }) },
          { value: "whole", label: t("comparison.view.whole") },
          { value: "checks", label: t("comparison.view.checks", { count: broken }) },
        ]}
      >
        {view === "answer" && <AnswerView source={source} rows={rows} onOpen={open} />}
        {view === "items" && (
          <div className={styles.spread}>
            <Rail filtered={isFiltered(search)}>
              <CarPlan
                stations={source.index.sheet.stations}
                rows={rows}
                selected={search.station}
                onSelect={(station) => onLines({ station })}
              />
              <Filters
                search={search}
                sections={source.index.sheet.sections.filter(({ id }) => used.has(id))}
                shown={shown.length}
                total={listed.length}
                onChange={onLines}
                onClear={() => onLines(none)}
              />
            </Rail>
            {shown.length === 0 ? (
              <Empty title={t("facing.empty")}>{t("facing.empty.hint")}</Empty>
            ) : (
              <FacingPages
                rows={shown}
                all={rows}
                source={source}
                order={search.order ?? "pressing"}
                open={search.open}
                onToggle={(at) => onLines({ open: search.open === at ? undefined : at })}
                choosing={choosing}
              />
            )}
          </div>
        )}
        {view === "whole" && <WholeReport source={source} rows={rows} onOpen={open} />}
        {view === "checks" && (
          <Checks
            source={source}
            onOpenPlace={(item, position) => {
              const row = rows.find(({ entry }) => entry.item === item && entry.position === position);
              if (row) open(row.at);
            }}
          />
        )}
      </Tabs>
    </div>
  );
};
