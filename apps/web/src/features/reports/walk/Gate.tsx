import { Button } from "@mantine/core";
import { useText } from "../../../strings/text";
import { Notice } from "../../../ui/Notice";
import { useTimes } from "../../../entities/time/use-times";
import type { WalkStage } from "../walk";
import styles from "./Walk.module.css";

interface Props {
  readonly stage: WalkStage;
  readonly zone: string;
  /** When this stage's cautions were read. */
  readonly read: string | undefined;
  readonly onRead: () => void;
}

/** A stage's cautions, once: nothing of the stage shows before they were read. Afterwards they fold away, to be read again. */
export const Gate = ({ stage, zone, read, onRead }: Props) => {
  const t = useText();
  const times = useTimes();
  const list = (
    <ul>
      {stage.cautions.map(({ id, text }) => (
        <li key={id}>{text}</li>
      ))}
    </ul>
  );
  const name = t(`walk.stage.${stage.stage}`);
  if (read !== undefined)
    return (
      <details className={styles.read}>
        <summary>{t("walk.gate.read", { time: times.time(read, zone) })}</summary>
        {list}
      </details>
    );
  return (
    <Notice kind="caution" title={t("walk.gate", { stage: name })}>
      {list}
      <Button size="md" fullWidth className={styles.begin} onClick={onRead}>
        {t("walk.gate.begin")}
      </Button>
    </Notice>
  );
};
