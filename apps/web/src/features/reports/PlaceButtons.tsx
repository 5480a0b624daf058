import { Button } from "@mantine/core";
import { IconEyeOff } from "@tabler/icons-react";
import { useText } from "../../strings/text";
import type { EditStep, PlaceEdit } from "./place-edit";
import styles from "./PlaceEditor.module.css";

interface Props {
  readonly edit: PlaceEdit;
  /** The item may be missing from the car altogether. */
  readonly equipment: boolean;
  /** What was answered may be taken back; not where the first answer stays. */
  readonly clears: boolean;
  readonly walked: boolean;
  readonly onStep: (step: EditStep) => void;
  readonly onNext: () => void;
}

const NotFitted = ({ edit, walked, onStep, onNext }: Props) => {
  const t = useText();
  const notFitted = edit.answer?.kind === "not-fitted";
  return (
    <Button
      variant={notFitted ? "filled" : "default"}
      size="md"
      aria-pressed={notFitted}
      onClick={() => {
        onStep(notFitted ? { type: "clear" } : { type: "answer", answer: { kind: "not-fitted" } });
        if (walked && !notFitted) onNext();
      }}
    >
      {t("place.not-fitted")}
    </Button>
  );
};

const NotSeen = ({ edit: { notSeen }, onStep }: Props) => {
  const t = useText();
  return (
    <Button
      variant={notSeen ? "filled" : "default"}
      size="md"
      leftSection={<IconEyeOff size={18} aria-hidden="true" />}
      aria-pressed={notSeen}
      onClick={() => onStep({ type: "not-seen" })}
    >
      {t("place.not-seen")}
    </Button>
  );
};

const Next = ({ edit: { answer }, walked, onNext }: Props) => {
  const t = useText();
  const later = walked && answer === null;
  return (
    <Button
      variant={later ? "default" : "filled"}
      size="md"
      className={later ? undefined : styles.next}
      onClick={onNext}
    >
      {t(later ? "place.later" : "place.next")}
    </Button>
  );
};

/** What can be said of a place besides its answer, and on to the next. */
export const PlaceButtons = (props: Props) => {
  const { edit, equipment, clears, onStep } = props;
  const t = useText();
  return (
    <div className={styles.buttons}>
      {equipment && <NotFitted {...props} />}
      <NotSeen {...props} />
      {clears && (edit.answer !== null || edit.unread !== undefined) && (
        <Button variant="subtle" size="md" onClick={() => onStep({ type: "clear" })}>
          {t("place.clear")}
        </Button>
      )}
      <Next {...props} />
    </div>
  );
};
