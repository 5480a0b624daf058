import { Button } from "@mantine/core";
import type { Report } from "@evenhand/shared/report";
import type { Stage } from "@evenhand/shared/sheet";
import { useCallback, useMemo } from "react";
import { useText } from "../../../strings/text";
import { Empty } from "../../../ui/Page";
import { useFirstScroll } from "../../../ui/scroll-to";
import type { SheetIndex } from "../../../entities/sheet/sheet-index";
import { Instruments } from "../Instruments";
import type { Draft } from "../SaveState";
import { SealPanel } from "../SealPanel";
import sheet from "../Sheet.module.css";
import type { SheetSearch } from "../sheet-search";
import { useOwnChecks } from "../use-own-checks";
import { Gate } from "./Gate";
import { ProgressLine } from "./ProgressLine";
import { RoadClosed } from "./RoadClosed";
import { StageRail } from "./StageRail";
import { Stop } from "./Stop";
import { extentOf, showLine, turnId, useAdvance, useStages, useTogether } from "./use-walk";
import { nextOpen, progressOf, stageAt, wholeProgress, type WalkStage } from "../walk";
import styles from "./Walk.module.css";

interface Props {
  readonly reportId: string;
  readonly report: Report;
  readonly draft: Draft;
  readonly index: SheetIndex;
  readonly search: SheetSearch;
  readonly onSearch: (change: SheetSearch) => void;
}

interface StageProps extends Props {
  readonly stage: WalkStage;
  readonly onNextStage: { readonly go: () => void; readonly name: string } | undefined;
}

/** What was said with one press stays in sight, to be taken back with one. */
const Undo = ({ count, onUndo }: { readonly count: number; readonly onUndo: () => void }) => {
  const t = useText();
  return (
    <output className={styles.undo}>
      {count > 0 && (
        <>
          <span>{t("walk.said", { count })}</span>
          <Button variant="white" size="compact-md" onClick={onUndo}>
            {t("place.undo")}
          </Button>
        </>
      )}
    </output>
  );
};

/** The lines of one stage, stop by stop, once its cautions were read. */
const StageLines = ({ report, draft, index, search, onSearch, stage, onNextStage }: StageProps) => {
  const t = useText();
  const { findings, keep, settle } = draft;
  const checks = useOwnChecks(report, draft.draft?.handbook, index, findings);
  const onOpen = useCallback((open: string | undefined) => onSearch({ open }), [onSearch]);
  const next = useAdvance(stage.lines, findings, onOpen);
  const together = useTogether(report, findings, keep);
  const kept = useMemo(() => ({ findings, keep, settle }), [findings, keep, settle]);
  const left = nextOpen(stage.lines, findings, undefined) !== undefined;
  return (
    <>
      {stage.stage === "road" && (
        <RoadClosed
          report={report}
          index={index}
          lines={stage.lines}
          findings={findings}
          onSay={(said) => {
            together.say(said);
            next(
              undefined,
              said.map(({ place }) => place),
            );
          }}
        />
      )}
      {stage.stops.map((stop) => (
        <Stop
          key={stop.id}
          report={report}
          index={index}
          stage={stage}
          stop={stop}
          draft={kept}
          checks={checks}
          open={search.open}
          onOpen={onOpen}
          onNext={next}
          onSay={together.say}
        />
      ))}
      <Undo count={together.last.length} onUndo={together.undo} />
      <div className={sheet.turn} id={turnId}>
        {onNextStage && (
          <Button
            size="lg"
            className={styles.following}
            variant={left ? "default" : "filled"}
            onClick={onNextStage.go}
          >
            {t("walk.next", { stage: onNextStage.name })}
          </Button>
        )}
      </div>
    </>
  );
};

/** The sheet as one walks it: stage by stage, stop by stop. */
export const WalkSheet = (props: Props) => {
  const { reportId, report, draft, index, search, onSearch } = props;
  const t = useText();
  const { findings, cautionsRead } = draft;
  const brief = draft.draft?.brief;
  const extent = extentOf(search, brief);
  const walk = useStages(index, report, extent, brief);
  useFirstScroll(search.open === undefined ? undefined : `place-${search.open}`);
  const parts = useMemo(
    () => new Map(walk.map((one) => [one.stage, progressOf(one, findings)] as const)),
    [walk, findings],
  );
  const stage = stageAt(walk, search.stage);
  if (stage === undefined) return <Empty title={t("walk.none")}>{t("walk.none.hint")}</Empty>;
  const wasRead = (one: WalkStage): string | undefined =>
    one.cautions.length === 0 ? "" : cautionsRead.find((each) => each.stage === one.stage)?.time;
  const go = (to: Stage): void => {
    const there = stageAt(walk, to);
    const first =
      there && wasRead(there) !== undefined ? nextOpen(there.lines, findings, undefined) : undefined;
    onSearch({ stage: to, open: first?.key });
    if (first === undefined) globalThis.scrollTo({ top: 0 });
    else showLine(first.key);
  };
  const read = wasRead(stage);
  const following = walk[walk.indexOf(stage) + 1];
  return (
    <div className={sheet.sheet}>
      <StageRail
        walk={walk}
        current={stage.stage}
        parts={parts}
        extent={extent}
        hasBrief={(brief ?? null) !== null}
        onExtent={(next) => onSearch({ extent: next, open: undefined })}
        onGo={go}
        onSections={() => onSearch({ view: "sections", stage: undefined, open: undefined })}
      />
      <div className={sheet.body}>
        <ProgressLine
          walk={walk}
          current={stage.stage}
          whole={wholeProgress([...parts.values()])}
          parts={parts}
          onGo={go}
        />
        <h2 className={sheet.heading}>
          <span>{walk.indexOf(stage) + 1}</span> {t(`walk.stage.${stage.stage}`)}
        </h2>
        {stage === walk[0] && <Instruments reportId={reportId} draft={draft} />}
        {stage.cautions.length > 0 && (
          <Gate
            stage={stage}
            zone={report.visit.zone}
            read={read}
            onRead={() => {
              void draft.readCautions(stage.stage);
              const first = nextOpen(stage.lines, findings, undefined)?.key;
              onSearch({ stage: stage.stage, open: first });
              if (first !== undefined) showLine(first);
            }}
          />
        )}
        {read !== undefined && (
          <StageLines
            key={stage.stage}
            {...props}
            stage={stage}
            onNextStage={
              following && { go: () => go(following.stage), name: t(`walk.stage.${following.stage}`) }
            }
          />
        )}
        {following === undefined && (
          <SealPanel
            reportId={reportId}
            report={report}
            draft={draft}
            index={index}
            places={walk.flatMap(({ lines }) => lines)}
            allAsked
            onGo={({ open }) => {
              const there = walk.find(({ lines }) => lines.some(({ key }) => key === open));
              onSearch({ stage: there?.stage, open });
              if (open !== undefined) showLine(open);
            }}
          />
        )}
      </div>
    </div>
  );
};
