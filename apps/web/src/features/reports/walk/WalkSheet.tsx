import type { Report } from "@evenhand/shared/report";
import { useCallback, useMemo } from "react";
import { useText } from "../../../strings/text";
import { Empty } from "../../../ui/Page";
import { useFirstScroll } from "../../../ui/scroll-to";
import type { SheetIndex } from "../../../entities/sheet/sheet-index";
import { Instruments } from "../Instruments";
import type { Draft } from "../../../offline/use-draft";
import { SealPanel } from "../SealPanel";
import sheet from "../Sheet.module.css";
import type { SheetSearch } from "../sheet-search";
import { Gate } from "./Gate";
import { ProgressLine } from "./ProgressLine";
import { StageLines } from "./StageLines";
import { StageRail } from "./StageRail";
import { extentOf, showLine, useStages } from "./use-walk";
import { walkSearchAfter, walkView, type WalkMove, type WalkView } from "./walk-view";

interface Props {
  readonly reportId: string;
  readonly report: Report;
  readonly draft: Draft;
  readonly index: SheetIndex;
  readonly search: SheetSearch;
  readonly onSearch: (change: SheetSearch) => void;
}

interface Walked extends Props {
  readonly view: WalkView;
  readonly onMove: (move: WalkMove) => void;
}

/** The stage shown: its gate, and its lines once its cautions were read. */
const StageBody = ({ view, onMove, onSearch, ...props }: Walked) => {
  const { stage, read, following } = view;
  const { report, draft, index, search } = props;
  const onOpen = useCallback((open: string | undefined) => onSearch({ open }), [onSearch]);
  const begin = (): void => {
    void draft.readCautions(stage.stage);
    onMove({ type: "begin" });
  };
  return (
    <>
      {stage === view.walk[0] && <Instruments reportId={props.reportId} draft={draft} />}
      {stage.cautions.length > 0 && (
        <Gate stage={stage} zone={report.visit.zone} read={read} onRead={begin} />
      )}
      {read !== undefined && (
        <StageLines
          key={stage.stage}
          {...{ report, draft, index, stage, following, onOpen }}
          open={search.open}
          onFollow={(next) => onMove({ type: "stage", stage: next.stage })}
        />
      )}
    </>
  );
};

const StageHeading = ({ view: { number, stage } }: Pick<Walked, "view">) => {
  const t = useText();
  return (
    <h2 className={sheet.heading}>
      <span>{number}</span> {t(`walk.stage.${stage.stage}`)}
    </h2>
  );
};

const WalkBody = (props: Walked) => {
  const { view, onMove, reportId, report, draft } = props;
  const places = view.walk.flatMap(({ lines }) => lines);
  return (
    <div className={sheet.body}>
      <ProgressLine view={view} onMove={onMove} />
      <StageHeading view={view} />
      <StageBody {...props} />
      {view.following === undefined && (
        <SealPanel
          {...{ reportId, report, draft, places }}
          allAsked
          onGo={({ open }) => onMove({ type: "line", place: open })}
        />
      )}
    </div>
  );
};

/** Moves about the walk: the address first, then what is to be seen. */
const useMoves =
  ({ draft: { findings, cautionsRead }, onSearch }: Props, view: WalkView | undefined) =>
  (move: WalkMove): void => {
    if (view === undefined) return;
    const change = walkSearchAfter(view, findings, cautionsRead, move);
    onSearch(change);
    if (change.open !== undefined) showLine(change.open);
    else if (move.type === "stage") globalThis.scrollTo({ top: 0 });
  };

/** The sheet as one walks it: stage by stage, stop by stop. */
export const WalkSheet = (props: Props) => {
  const { report, draft, index, search } = props;
  const t = useText();
  const brief = draft.draft?.brief;
  const extent = extentOf(search, brief);
  const walk = useStages(index, report, extent, brief);
  useFirstScroll(search.open === undefined ? undefined : `place-${search.open}`);
  const { findings, cautionsRead } = draft;
  const view = useMemo(
    () => walkView(walk, search.stage, findings, cautionsRead),
    [walk, search.stage, findings, cautionsRead],
  );
  const onMove = useMoves(props, view);
  if (view === undefined) return <Empty title={t("walk.none")}>{t("walk.none.hint")}</Empty>;
  return (
    <div className={sheet.sheet}>
      <StageRail view={view} extent={extent} hasBrief={(brief ?? null) !== null} onMove={onMove} />
      <WalkBody {...props} view={view} onMove={onMove} />
    </div>
  );
};
