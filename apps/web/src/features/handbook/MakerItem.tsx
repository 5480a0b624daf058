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

type Change = NonNullable<Props["onChange"]>;

interface NamedProps {
  readonly name: string;
  readonly entry: MakerTyped;
  readonly onChange: Change;
}

const RemoveButton = ({ name, entry, onChange }: NamedProps) => {
  const t = useText();
  return (
    <Button
      variant="default"
      aria-label={t("own.maker.remove.of", { name })}
      onClick={() => onChange({ ...entry, removed: true })}
    >
      {t("own.maker.remove")}
    </Button>
  );
};

type ButtonRef = ReturnType<typeof useFocusAfter>;

/** Taken out, until it is stored: it can still be kept. */
const Removed = ({ name, entry, onChange, button }: NamedProps & { readonly button: ButtonRef }) => {
  const t = useText();
  return (
    <div className={styles.removed}>
      <span>{t("own.maker.removed", { name })}</span>
      <Button ref={button} variant="default" onClick={() => onChange({ ...entry, removed: false })}>
        {t("own.maker.keep")}
      </Button>
    </div>
  );
};

const ClosedButtons = ({
  button,
  onOpen,
  ...of
}: NamedProps & { readonly button: ButtonRef; readonly onOpen: () => void }) => {
  const t = useText();
  return (
    <div className={styles.buttons}>
      <Button
        ref={button}
        variant="default"
        aria-label={t("own.maker.change.of", { name: of.name })}
        onClick={onOpen}
      >
        {t("own.maker.change")}
      </Button>
      <RemoveButton {...of} />
    </div>
  );
};

interface OpenProps extends NamedProps {
  readonly problems: MakerProblems | undefined;
  readonly tried: boolean;
  readonly onDone: () => void;
}

const OpenFields = ({ problems, tried, onDone, ...of }: OpenProps) => {
  const t = useText();
  return (
    <>
      <MakerFields entry={of.entry} problems={problems} tried={tried} onChange={of.onChange} />
      <div className={styles.buttons}>
        <Button variant="default" onClick={onDone}>
          {t("own.maker.done")}
        </Button>
        <RemoveButton {...of} />
      </div>
    </>
  );
};

/** Whether the fields show, and on being done with them whether they were looked over. */
const useOpen = ({ entry, problems, tried, added }: Props) => {
  const [open, setOpen] = useState(added);
  const [checked, setChecked] = useState(false);
  const shows = open || (tried && problems !== undefined);
  const state: State = entry.removed ? "removed" : shows ? "open" : "closed";
  const done = (): void => {
    setChecked(true);
    setOpen(problems !== undefined);
  };
  return { state, tried: tried || checked, done, open: () => setOpen(true) };
};

/** One make: what is entered, and on asking the fields to change it. */
export const MakerItem = (props: Props) => {
  const { entry, problems, onChange } = props;
  const t = useText();
  const shown = useOpen(props);
  const button = useFocusAfter(shown.state);
  const name = carsOf(makerOf(entry)) || t("own.maker.new");
  const named = onChange && { name, entry, onChange };
  if (named && shown.state === "removed") return <Removed {...named} button={button} />;
  return (
    <article className={styles.maker} aria-label={name}>
      <div className={styles.makerHead}>
        <h3>{name}</h3>
        {named && shown.state === "closed" && (
          <ClosedButtons {...named} button={button} onOpen={shown.open} />
        )}
      </div>
      {named && shown.state === "open" ? (
        <OpenFields {...named} problems={problems} tried={shown.tried} onDone={shown.done} />
      ) : (
        <MakerFacts entry={entry} />
      )}
    </article>
  );
};
