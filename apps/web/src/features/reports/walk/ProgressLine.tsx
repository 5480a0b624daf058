import { NativeSelect } from "@mantine/core";
import type { Stage } from "@evenhand/shared/sheet";
import { useText } from "../../../strings/text";
import type { Progress, WalkStage } from "../walk";
import styles from "./Walk.module.css";

interface Props {
  readonly walk: readonly WalkStage[];
  readonly current: Stage;
  readonly whole: Progress;
  readonly parts: ReadonlyMap<Stage, Progress>;
  readonly onGo: (stage: Stage) => void;
}

/** Always in sight: how much of the chosen depth is answered, here and in all, and the minutes the sheet still counts. */
export const ProgressLine = ({ walk, current, whole, parts, onGo }: Props) => {
  const t = useText();
  const here = parts.get(current);
  return (
    <div className={styles.progress}>
      <NativeSelect
        className={styles.stageChoice}
        size="md"
        aria-label={t("walk.stage")}
        value={current}
        onChange={(event) => {
          const stage = walk.find((one) => one.stage === event.currentTarget.value)?.stage;
          if (stage) onGo(stage);
        }}
        data={walk.map(({ stage }) => ({
          value: stage,
          label: t("walk.stage.option", {
            stage: t(`walk.stage.${stage}`),
            done: parts.get(stage)?.done ?? 0,
            all: parts.get(stage)?.all ?? 0,
          }),
        }))}
      />
      <p className={`${styles.counts} figures`}>
        <span>{t("walk.progress", { done: whole.done, all: whole.all })}</span>
        <span>{t("walk.left", { minutes: Math.ceil(whole.minutesLeft) })}</span>
        <span className={styles.hereLeft}>
          {t("walk.left.here", { minutes: Math.ceil(here?.minutesLeft ?? 0) })}
        </span>
      </p>
      <progress
        className={styles.bar}
        aria-label={t("walk.progress.bar")}
        max={Math.max(1, whole.all)}
        value={whole.done}
      />
    </div>
  );
};
