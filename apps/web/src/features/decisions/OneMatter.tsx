import { Button, Textarea } from "@mantine/core";
import type { MatterAnswer, OpenMatter, SummaryItem } from "@evenhand/shared/summary";
import { Link } from "@tanstack/react-router";
import { useEffect, useRef } from "react";
import { useText } from "../../strings/text";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { Tag } from "../../ui/Page";
import { useItemWords } from "../../entities/sheet/item-words";
import { type Given, type Lack, showsWords } from "./matter-answers";
import styles from "./Summary.module.css";

const answers = ["first", "dealer", "look-again", "as-it-is"] as const satisfies readonly MatterAnswer[];
/** Lines in sight; the rest are in the comparison. */
const SHOWN = 4;

interface Props {
  readonly matter: OpenMatter;
  readonly number: number;
  readonly of: number;
  readonly comparison: string;
  /** One was answered or gone back to before it: the focus comes along. Choosing to approve leaves it where it is. */
  readonly follows: boolean;
  readonly given: Given;
  /** What is missing, once it was tried to go on. */
  readonly lack: Lack | undefined;
  /** Words as they are typed. */
  readonly onType: (given: Given) => void;
  /** An answer was pressed, or the words said again: on to the next. */
  readonly onAnswer: (given: Given) => void;
}

const Evidence = ({
  lines,
  comparison,
}: {
  readonly lines: readonly SummaryItem[];
  readonly comparison: string;
}) => {
  const t = useText();
  const nameOf = useItemWords();
  return (
    <ul className={styles.evidence}>
      {lines.slice(0, SHOWN).map((one) => (
        <li key={one.entry}>
          <OutcomeSign outcome={one.outcome} size={24} />
          <Link to="/comparisons/$comparison" params={{ comparison }} search={{ open: one.entry }}>
            {nameOf(one)}
          </Link>
          <span className={styles.note}>{t(`outcome.${one.outcome}`)}</span>
        </li>
      ))}
      {lines.length > SHOWN && (
        <li className={styles.note}>{t("answer.more", { count: lines.length - SHOWN })}</li>
      )}
    </ul>
  );
};

const Pick = ({ matter, given, onAnswer }: Pick<Props, "matter" | "given" | "onAnswer">) => {
  const t = useText();
  return (
    <div className={styles.pick}>
      {answers.map((answer) => (
        <Button
          key={answer}
          size="md"
          variant={given.answer === answer ? "filled" : "default"}
          aria-pressed={given.answer === answer}
          onClick={() => onAnswer({ ...given, answer })}
        >
          {t(answer === "first" ? `decide.matter.first.${matter.severity}` : `decide.matter.${answer}`)}
        </Button>
      ))}
    </div>
  );
};

/** The eye and the keys go where the next thing is to be done: the words where they are asked for, else the matter. */
const useFocus = (follows: boolean, words: boolean) => {
  const place = useRef<HTMLFieldSetElement>(null);
  const moves = useRef(follows);
  useEffect(() => {
    // From the first answer on.
    if (!moves.current) {
      moves.current = true;
      return;
    }
    const field = words ? place.current?.querySelector("textarea") : undefined;
    (field ?? place.current)?.focus({ preventScroll: true });
    place.current?.scrollIntoView({ block: "nearest" });
  }, [words]);
  return place;
};

const Words = ({
  matter,
  given,
  lack,
  onType,
  onAnswer,
}: Omit<Props, "comparison" | "follows" | "number" | "of">) => {
  const t = useText();
  return (
    <div className={styles.words}>
      <Textarea
        size="md"
        autosize
        minRows={2}
        maxLength={1000}
        label={t("decide.matter.words")}
        description={t(`decide.matter.words.${matter.severity}`)}
        error={lack !== undefined && lack !== "not-answered" ? t(`decide.matter.lack.${lack}`) : undefined}
        value={given.words}
        onChange={(event) => onType({ ...given, words: event.currentTarget.value })}
      />
      {given.answer !== null && (
        <Button size="md" onClick={() => onAnswer(given)}>
          {t("decide.matter.on")}
        </Button>
      )}
    </div>
  );
};

/** One matter, with what speaks of it in sight: an answer leads on to the next, once it has the words it needs. */
export const OneMatter = (props: Props) => {
  const t = useText();
  const { matter, number, of, comparison, follows, given, onAnswer } = props;
  const words = showsWords(matter, given);
  const place = useFocus(follows, words);
  const found = matter.lines.some((line) => line.found);
  return (
    <fieldset ref={place} tabIndex={-1} className={styles.matter} aria-label={matter.headline}>
      <p className={styles.note}>{t("decide.matter.number", { number, of })}</p>
      <h4>{matter.headline}</h4>
      <p>
        <Tag strong>{t(found ? `severity.${matter.severity}` : `at-stake.${matter.severity}`)}</Tag>
      </p>
      {matter.found !== "" && <p>{matter.found}</p>}
      <Evidence lines={matter.lines} comparison={comparison} />
      {words && <Words {...props} />}
      <Pick matter={matter} given={given} onAnswer={onAnswer} />
    </fieldset>
  );
};
