import { Button } from "@mantine/core";
import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { useState } from "react";
import { AnswerEditor } from "../../entities/answer/AnswerEditor";
import { positionWords, type SheetIndex } from "../../entities/sheet/sheet-index";
import type { Unread } from "../../offline/store";
import { useText } from "../../strings/text";
import styles from "./HandOvers.module.css";

interface Props {
  readonly item: Item;
  readonly position: string;
  readonly index: SheetIndex;
  readonly answer: Answer | undefined;
  readonly onSay: (answer: Answer | null) => void;
}

const isNone = (answer: Answer | undefined): boolean =>
  answer?.kind === "faults" && answer.found.length === 0 && answer.denied === "all";

interface ButtonsProps extends Pick<Props, "item" | "answer" | "onSay"> {
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

const PlaceButtons = ({ item, answer, onSay, notSeen, setOpen, setNotSeen }: ButtonsProps) => {
  const t = useText();
  const turn = () => {
    setNotSeen(!notSeen);
    if (answer !== undefined) onSay(null);
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

/** One place of the sheet, as a driver answers it. */
export const PlaceRow = ({ item, position, index, answer, onSay }: Props) => {
  const [open, setOpen] = useState(false);
  const [notSeen, setNotSeen] = useState(answer?.kind === "not-seen");
  const [unread, setUnread] = useState<Unread | undefined>();
  const named = position === "" ? item.words.american : positionWords(index, item, position);
  const found = answer?.kind === "faults" && answer.found.length > 0;
  const shown = item.answer !== "faults" || open || found || notSeen;
  return (
    <li className={styles.place} aria-label={named}>
      <h3>{named}</h3>
      {shown && (
        <AnswerEditor
          item={item}
          index={index}
          scales={[]}
          name={`${item.id}-${position}`}
          answer={answer}
          notSeen={notSeen}
          unread={unread}
          onChange={(next, left) => {
            setUnread(left);
            onSay(next);
          }}
        />
      )}
      <PlaceButtons {...{ item, answer, onSay, notSeen, setOpen, setNotSeen }} />
    </li>
  );
};
