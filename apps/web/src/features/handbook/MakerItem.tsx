import { Button } from "@mantine/core";
import { useEffect, useRef, useState } from "react";
import { useText } from "../../strings/text";
import { makerOf, type MakerTyped } from "./maker-form";
import type { MakerProblems } from "./maker-problems";
import { MakerFacts } from "./MakerFacts";
import { MakerFields } from "./MakerFields";
import { carsOf } from "./own-handbook";
import styles from "./OwnFigures.module.css";

interface Props {
  readonly entry: MakerTyped;
  readonly problems: MakerProblems | undefined;
  readonly tried: boolean;
  /** Just added: it begins open. */
  readonly added: boolean;
  /** Left out where it is only to be read. */
  readonly onChange: ((entry: MakerTyped) => void) | undefined;
}

type State = "closed" | "open" | "removed";

/** The button that brings back what a step took away takes the focus after it. */
const useFocusAfter = (state: State) => {
  const button = useRef<HTMLButtonElement>(null);
  const before = useRef(state);
  useEffect(() => {
    if (before.current !== state && state !== "open") button.current?.focus();
    before.current = state;
  }, [state]);
  return button;
};

/** One make: what is entered, and on asking the fields to change it. */
export const MakerItem = ({ entry, problems, tried, added, onChange }: Props) => {
  const t = useText();
  const [open, setOpen] = useState(added);
  const [checked, setChecked] = useState(false);
  const name = carsOf(makerOf(entry)) || t("own.maker.new");
  const shows = open || (tried && problems !== undefined);
  const state: State = entry.removed ? "removed" : shows ? "open" : "closed";
  const button = useFocusAfter(state);
  const done = (): void => {
    setChecked(true);
    setOpen(problems !== undefined);
  };
  if (onChange && state === "removed") {
    return (
      <div className={styles.removed}>
        <span>{t("own.maker.removed", { name })}</span>
        <Button ref={button} variant="default" onClick={() => onChange({ ...entry, removed: false })}>
          {t("own.maker.keep")}
        </Button>
      </div>
    );
  }
  const remove = (
    <Button
      variant="default"
      aria-label={t("own.maker.remove.of", { name })}
      onClick={() => onChange?.({ ...entry, removed: true })}
    >
      {t("own.maker.remove")}
    </Button>
  );
  return (
    <article className={styles.maker} aria-label={name}>
      <div className={styles.makerHead}>
        <h3>{name}</h3>
        {onChange && state === "closed" && (
          <div className={styles.buttons}>
            <Button
              ref={button}
              variant="default"
              aria-label={t("own.maker.change.of", { name })}
              onClick={() => setOpen(true)}
            >
              {t("own.maker.change")}
            </Button>
            {remove}
          </div>
        )}
      </div>
      {onChange && state === "open" ? (
        <>
          <MakerFields entry={entry} problems={problems} tried={tried || checked} onChange={onChange} />
          <div className={styles.buttons}>
            <Button variant="default" onClick={done}>
              {t("own.maker.done")}
            </Button>
            {remove}
          </div>
        </>
      ) : (
        <MakerFacts entry={entry} />
      )}
    </article>
  );
};
