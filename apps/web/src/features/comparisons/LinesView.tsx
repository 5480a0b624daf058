import type { Answer, AnsweredMatter } from "@evenhand/shared/page-one";
import type { Outcome } from "@evenhand/shared/outcome";
import { useMediaQuery } from "@mantine/hooks";
import type { ReactNode, RefObject } from "react";
import { useText } from "../../strings/text";
import { Empty } from "../../ui/Page";
import type { Choosing } from "../../entities/comparison/choosing";
import type { ComparisonSource, Row } from "../../entities/comparison/model";
import { useLineStates } from "../../entities/release/queries";
import styles from "./ComparisonView.module.css";
import { Filters } from "./Filters";
import { countsOf, isFiltered, linesOfMatter, noFilter, visibleRows } from "./filters";
import { LineList } from "./LineList";
import { CarPlan } from "./plan/CarPlan";
import type { ComparisonSearch } from "./search";
import { Tally } from "./Tally";

interface Props {
  /** The comparison. */
  readonly id: string;
  readonly source: ComparisonSource;
  readonly rows: readonly Row[];
  readonly answer: Answer;
  readonly search: ComparisonSearch;
  readonly onSearch: (change: Partial<ComparisonSearch>) => void;
  readonly choosing?: Choosing;
  readonly goTo: RefObject<number | null>;
  readonly onLay?: (at: number) => void;
  /** How a matter stands with the dealer; absent for whoever is no party to it. */
  readonly settling?: (one: AnsweredMatter) => ReactNode;
}

const toggled = (list: readonly Outcome[], outcome: Outcome): Outcome[] | undefined => {
  const next = list.includes(outcome) ? list.filter((one) => one !== outcome) : [...list, outcome];
  return next.length === 0 ? undefined : next;
};

/** Beside the lines where there is room; folded above them where there is not. */
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

interface ControlsProps extends Props {
  readonly shown: number;
  readonly total: number;
  readonly onLines: (change: Partial<ComparisonSearch>) => void;
}

const Controls = ({ source, rows, answer, search, shown, total, onLines }: ControlsProps) => {
  const used = new Set(rows.map(({ section }) => section?.id));
  return (
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
        matters={[...answer.matters, ...answer.unknown].map(({ matter }) => matter.headline)}
        shown={shown}
        total={total}
        onChange={onLines}
        onClear={() => onLines(noFilter)}
      />
    </Rail>
  );
};

/** The one matter whose lines are shown, and how it stands with the dealer. */
const TheMatter = ({ answer, search, settling }: Pick<Props, "answer" | "search" | "settling">) => {
  const one = search.matter === undefined ? undefined : [...answer.matters, ...answer.unknown][search.matter];
  if (one === undefined || settling === undefined) return null;
  return (
    <section className={styles.theMatter}>
      <h2>{one.matter.headline}</h2>
      {settling(one)}
    </section>
  );
};

/** All lines: counts and filters, and the list. */
export const LinesView = (props: Props) => {
  const t = useText();
  const { id, source, rows, answer, search, onSearch, choosing, goTo, onLay } = props;
  const settled = useLineStates(id, onLay !== undefined);
  const ofMatter = linesOfMatter(answer, search.matter);
  const shown = visibleRows(rows, search, ofMatter);
  const total = visibleRows(rows, {}).length;
  const onLines = (change: Partial<ComparisonSearch>): void => onSearch({ view: "items", ...change });
  return (
    <div className={styles.lines}>
      <TheMatter {...props} />
      <Tally
        counts={countsOf(visibleRows(rows, { ...search, outcome: undefined }, ofMatter))}
        selected={search.outcome ?? []}
        onToggle={(outcome) => onLines({ outcome: toggled(search.outcome ?? [], outcome) })}
      />
      <div className={styles.spread}>
        <Controls {...props} shown={shown.length} total={total} onLines={onLines} />
        {shown.length === 0 ? (
          <Empty title={t("facing.empty")}>{t("facing.empty.hint")}</Empty>
        ) : (
          <LineList
            rows={shown}
            all={rows}
            source={source}
            order={search.order ?? "pressing"}
            open={search.open}
            goTo={goTo}
            onToggle={(at) => onLines({ open: search.open === at ? undefined : at })}
            choosing={choosing}
            onLay={onLay}
            settled={settled}
          />
        )}
      </div>
    </div>
  );
};
