import type { Report } from "@evenhand/shared/report";
import { useText } from "../../strings/text";
import { Empty } from "../../ui/Page";
import { useFirstScroll } from "../../ui/scroll-to";
import { capital, type SheetIndex } from "../../entities/sheet/sheet-index";
import { Instruments } from "./Instruments";
import { ItemCard } from "./ItemCard";
import type { Draft } from "../../offline/use-draft";
import { SealPanel } from "./SealPanel";
import { SectionRail } from "./SectionRail";
import { SectionTurn } from "./SectionTurn";
import type { SheetSearch } from "./sheet-search";
import { byItem } from "./sheet-view";
import styles from "./Sheet.module.css";
import { useOwnChecks } from "./use-own-checks";
import { useSheet } from "./use-sheet";

interface Props {
  readonly reportId: string;
  readonly report: Report;
  readonly draft: Draft;
  readonly index: SheetIndex;
  readonly search: SheetSearch;
  readonly onSearch: (change: SheetSearch) => void;
}

type Shown = Pick<ReturnType<typeof useSheet>, "view" | "move" | "onOpen">;

/** The lines of the current section, item by item. */
const SectionItems = ({ report, draft, index, search, view, move, onOpen }: Props & Shown) => {
  const t = useText();
  const { findings, keep, settle } = draft;
  const checks = useOwnChecks(report, draft.draft?.handbook, index, findings);
  if (view.here.length === 0) return <Empty title={t("sheet.empty")}>{t("sheet.empty.hint")}</Empty>;
  return byItem(view.here).map((group) => (
    <ItemCard
      key={group.item.id}
      report={report}
      index={index}
      group={group}
      findings={findings}
      checks={checks}
      open={search.open}
      onOpen={onOpen}
      onNext={(from) => move({ type: "next", from })}
      keep={keep}
      settle={settle}
    />
  ));
};

const SectionHeading = ({ view: { current } }: Pick<Shown, "view">) =>
  current && (
    <h2 className={styles.heading}>
      <span>{current.number}</span> {capital(current.words.american)}
    </h2>
  );

/** The sheet, a section at a time. */
export const Sheet = (props: Props) => {
  const { reportId, report, draft, index, search, onSearch } = props;
  useFirstScroll(search.open === undefined ? undefined : `place-${search.open}`);
  const { places, ...shown } = useSheet({ report, index, findings: draft.findings, search, onSearch });
  const { view, move } = shown;
  const sealing = { reportId, report, draft, places };
  return (
    <div className={styles.sheet}>
      <SectionRail view={view} items={search.items} onMove={move} />
      <div className={styles.body}>
        <SectionHeading view={view} />
        {view.current?.number === 0 && <Instruments reportId={reportId} draft={draft} />}
        <SectionItems {...props} {...shown} />
        <SectionTurn view={view} onMove={move} />
        {(view.after === undefined || view.isFirst) && <SealPanel {...sealing} onGo={onSearch} />}
      </div>
    </div>
  );
};
