import { Button } from "@mantine/core";
import type { Report } from "@evenhand/shared/report";
import { useCallback, useMemo } from "react";
import { useText } from "../../../strings/text";
import type { SheetIndex } from "../../../entities/sheet/sheet-index";
import type { Draft } from "../../../offline/use-draft";
import sheet from "../Sheet.module.css";
import { useOwnChecks } from "../use-own-checks";
import { nextOpen, openLines, type Said, type WalkStage } from "../walk";
import { RoadClosed } from "./RoadClosed";
import { Stop } from "./Stop";
import { useRoadGate } from "./use-road-gate";
import { turnId, useAdvance, useTogether } from "./use-walk";
import styles from "./Walk.module.css";

interface Props {
  readonly report: Report;
  readonly draft: Draft;
  readonly index: SheetIndex;
  readonly stage: WalkStage;
  readonly open: string | undefined;
  readonly onOpen: (key: string | undefined) => void;
  readonly following: WalkStage | undefined;
  readonly onFollow: (stage: WalkStage) => void;
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

/** On to the stage after this one; it stands out once nothing is left here. */
const Onward = ({
  left,
  following,
  onFollow,
}: Pick<Props, "following" | "onFollow"> & { readonly left: boolean }) => {
  const t = useText();
  return (
    <div className={sheet.turn} id={turnId}>
      {following && (
        <Button
          size="lg"
          className={styles.following}
          variant={left ? "default" : "filled"}
          onClick={() => onFollow(following)}
        >
          {t("walk.next", { stage: t(`walk.stage.${following.stage}`) })}
        </Button>
      )}
    </div>
  );
};

/** How the lines of one stage are gone through: from one to the next, and several said with one press. */
const useLines = ({ report, draft, index, stage, onOpen }: Props) => {
  const { findings, keep, settle } = draft;
  const checks = useOwnChecks(report, draft.draft?.handbook, index, findings);
  const next = useAdvance(stage.lines, findings, onOpen);
  const pressed = useTogether(report, findings, keep);
  const kept = useMemo(() => ({ findings, keep, settle }), [findings, keep, settle]);
  const { say } = pressed;
  const sayAndGo = useCallback(
    (said: readonly Said[]): void => {
      say(said);
      next(
        undefined,
        said.map(({ place }) => place),
      );
    },
    [say, next],
  );
  return { checks, next, pressed, kept, sayAndGo };
};

/** The lines of one stage, stop by stop, once its cautions were read. */
export const StageLines = (props: Props) => {
  const { report, draft, index, stage, open, onOpen } = props;
  const { findings } = draft;
  const { checks, next, pressed, kept, sayAndGo } = useLines(props);
  const gate = useRoadGate(report, index, findings);
  const isRoad = stage.stage === "road";
  const lines = { report, index, stage, checks, open, onOpen, onNext: next, onSay: pressed.say };
  return (
    <>
      {isRoad && gate && <RoadClosed gate={gate} open={openLines(stage.lines, findings)} onSay={sayAndGo} />}
      {stage.stops.map((stop) => (
        <Stop key={stop.id} {...lines} stop={stop} draft={kept} mayTry={!isRoad || gate?.isShut === false} />
      ))}
      <Undo count={pressed.last.length} onUndo={pressed.undo} />
      <Onward {...props} left={nextOpen(stage.lines, findings, undefined) !== undefined} />
    </>
  );
};
