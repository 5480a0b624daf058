import { Button } from "@mantine/core";
import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { useState } from "react";
import { AnswerEditor } from "../../entities/answer/AnswerEditor";
import { positionWords, type SheetIndex } from "../../entities/sheet/sheet-index";
import { useText } from "../../strings/text";
import { LongTextField } from "../../ui/Fields";
import type { CarriedSheet } from "./carried-sheet";
import styles from "./HandOvers.module.css";
import { PlacePictures, TakePicture } from "./PlacePictures";
import type { CarriedPictures } from "./use-carried-pictures";

interface Props {
  readonly item: Item;
  readonly position: string;
  readonly index: SheetIndex;
  readonly answer: Answer | undefined;
  /** What was typed as a figure and cannot be read as one. */
  readonly unread: CarriedSheet["unread"][string] | undefined;
  readonly note: string;
  readonly pictures: CarriedPictures;
  readonly onSay: (answer: Answer | null, unread?: Props["unread"]) => void;
  readonly onNote: (note: string) => void;
}

const isNone = (answer: Answer | undefined): boolean =>
  answer?.kind === "faults" && answer.found.length === 0 && answer.denied === "all";

interface ButtonsProps extends Pick<Props, "item" | "answer" | "unread" | "onSay"> {
  readonly notSeen: boolean;
  readonly setOpen: (open: boolean) => void;
  readonly setNotSeen: (notSeen: boolean) => void;
}

/** A thumb's work: none, or some. */
const DamageButtons = ({ answer, onSay, setOpen }: Pick<ButtonsProps, "answer" | "onSay" | "setOpen">) => {
  const t = useText();
  const none = isNone(answer);
  const sayNone = () => {
    setOpen(false);
    onSay({ kind: "faults", found: [], denied: "all" });
  };
  const saySome = () => {
    if (none) onSay(null);
    setOpen(true);
  };
  return (
    <>
      <Button size="md" variant={none ? "filled" : "default"} aria-pressed={none} onClick={sayNone}>
        {t("carry.none")}
      </Button>
      <Button size="md" variant="default" onClick={saySome}>
        {t("carry.some")}
      </Button>
    </>
  );
};

const PlaceButtons = ({ item, answer, unread, onSay, notSeen, setOpen, setNotSeen }: ButtonsProps) => {
  const t = useText();
  const turn = () => {
    setNotSeen(!notSeen);
    if (answer !== undefined || unread !== undefined) onSay(null);
  };
  return (
    <div className={styles.buttons}>
      {item.answer === "faults" && !notSeen && <DamageButtons {...{ answer, onSay, setOpen }} />}
      <Button size="md" variant="subtle" onClick={turn}>
        {t(notSeen ? "carry.seen" : "carry.not-seen")}
      </Button>
    </div>
  );
};

const LONGEST_NOTE = 4000;

/** A note goes with an answer; without one it would not be sent, and the field says so. */
const NoteField = ({
  answer,
  unread,
  note,
  onNote,
}: Pick<Props, "answer" | "unread" | "note" | "onNote">) => {
  const t = useText();
  if (answer === undefined && unread === undefined && note === "") return null;
  return (
    <LongTextField
      maxLength={LONGEST_NOTE}
      label={t("carry.add-note")}
      value={note}
      error={note.trim() !== "" && answer === undefined ? t("carry.note-alone") : undefined}
      onChange={onNote}
    />
  );
};

/** One place of the sheet, as a driver answers it. */
export const PlaceRow = ({ item, position, index, answer, unread, note, pictures, onSay, onNote }: Props) => {
  const [open, setOpen] = useState(false);
  const [notSeen, setNotSeen] = useState(answer?.kind === "not-seen");
  const named = position === "" ? item.words.american : positionWords(index, item, position);
  const found = answer?.kind === "faults" && answer.found.length > 0;
  const shown = item.answer !== "faults" || open || found || notSeen || unread !== undefined;
  return (
    <li className={styles.place} aria-label={named}>
      <div className={styles.named}>
        <h3>{named}</h3>
        <TakePicture of={pictures} at={{ item: item.id, position }} named={named} />
      </div>
      {shown && (
        <AnswerEditor
          item={item}
          index={index}
          scales={[]}
          name={`${item.id}-${position}`}
          answer={answer}
          notSeen={notSeen}
          unread={unread}
          onChange={onSay}
        />
      )}
      <PlaceButtons {...{ item, answer, unread, onSay, notSeen, setOpen, setNotSeen }} />
      <PlacePictures of={pictures} at={{ item: item.id, position }} named={named} />
      <NoteField {...{ answer, unread, note, onNote }} />
    </li>
  );
};
