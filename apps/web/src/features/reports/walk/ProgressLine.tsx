import { NativeSelect } from "@mantine/core";
import { useText } from "../../../strings/text";
import type { WalkMove, WalkView } from "./walk-view";
import styles from "./Walk.module.css";

interface Props {
  readonly view: WalkView;
  readonly onMove: (move: WalkMove) => void;
}

/** The stages where there is no room for a list of them. */
const StageChoice = ({ view: { walk, stage, parts }, onMove }: Props) => {
  const t = useText();
  return (
    <NativeSelect
      className={styles.stageChoice}
      size="md"
      aria-label={t("walk.stage")}
      value={stage.stage}
      onChange={(event) => {
        const chosen = walk.find((one) => one.stage === event.currentTarget.value)?.stage;
        if (chosen) onMove({ type: "stage", stage: chosen });
      }}
      data={walk.map((one) => ({
        value: one.stage,
        label: t("walk.stage.option", {
          stage: t(`walk.stage.${one.stage}`),
          done: parts.get(one.stage)?.done ?? 0,
          all: parts.get(one.stage)?.all ?? 0,
        }),
      }))}
    />
  );
};

/** Always in sight: how much of the chosen depth is answered, here and in all, and the minutes the sheet still counts. */
export const ProgressLine = (props: Props) => {
  const t = useText();
  const { stage, parts, whole } = props.view;
  const here = parts.get(stage.stage);
  return (
    <div className={styles.progress}>
      <StageChoice {...props} />
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
