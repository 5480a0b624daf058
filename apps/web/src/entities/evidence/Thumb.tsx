import { IconFile, IconMovie } from "@tabler/icons-react";
import type { KeyboardEvent } from "react";
import { addressOf } from "../../service/client";
import { useText } from "../../strings/text";
import { usePictureWords } from "./picture-words";
import { isShown, type Picture } from "./pictures";
import styles from "./Thumb.module.css";

interface Props {
  readonly picture: Picture;
  readonly onOpen: (id: string) => void;
}

const steps: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** From one picture to the next with the arrows, among those that stand together. */
const moveByArrow = (event: KeyboardEvent<HTMLButtonElement>): void => {
  const step = steps[event.key];
  const together = event.currentTarget.closest("[data-pictures]");
  if (step === undefined || together === null) return;
  const all = [...together.querySelectorAll<HTMLElement>("[data-picture-id]")];
  const next = all[all.indexOf(event.currentTarget) + step];
  if (next === undefined) return;
  event.preventDefault();
  next.focus();
};

/** What is no picture is not shown: its bytes stay with its owner. */
const Paper = ({ picture }: Pick<Props, "picture">) => {
  const t = useText();
  const words = usePictureWords();
  const of = picture.kind === "pdf" ? "paper" : "film";
  const Icon = of === "paper" ? IconFile : IconMovie;
  return (
    <span className={styles.paper} data-side={picture.side} title={words(picture)}>
      <Icon size={26} aria-hidden="true" />
      <span>{t(`evidence.${of}`)}</span>
      <span className="only-read">{words(picture)}</span>
    </span>
  );
};

/** A small picture; pressed, it is shown large. Until it has come its blurred placeholder stands for it. */
export const Thumb = ({ picture, onOpen }: Props) => {
  const t = useText();
  const words = usePictureWords();
  const { id, side, placeholder, questions } = picture;
  if (!isShown(picture)) return <Paper picture={picture} />;
  const behind = placeholder === null ? undefined : { backgroundImage: `url("${placeholder}")` };
  return (
    <button
      type="button"
      className={styles.thumb}
      data-side={side}
      data-picture-id={id}
      style={behind}
      onClick={() => onOpen(id)}
      onKeyDown={moveByArrow}
    >
      <img
        src={addressOf("evidence.small", { id })}
        alt={words(picture)}
        loading="lazy"
        decoding="async"
        width={160}
        height={120}
      />
      {questions.length > 0 && (
        <span className={styles.asks}>{t("evidence.questions", { count: questions.length })}</span>
      )}
    </button>
  );
};
