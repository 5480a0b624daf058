import type { OpenMatter } from "@evenhand/shared/summary";
import { useState } from "react";
import { useText } from "../../strings/text";
import { type Answers, type Given, lackOf, nothingGiven, openOf } from "./matter-answers";
import { OneMatter } from "./OneMatter";
import styles from "./Summary.module.css";

interface Props {
  readonly comparison: string;
  readonly matters: readonly OpenMatter[];
  readonly answers: Answers;
  readonly onAnswers: (answers: Answers) => void;
}

interface AnsweredProps extends Pick<Props, "matters" | "answers"> {
  readonly onChange: (id: string) => void;
}

/** What has been answered, each to be changed with one press. */
const Answered = ({ matters, answers, onChange }: AnsweredProps) => {
  const t = useText();
  const done = matters.filter(({ id }) => lackOf(matters, answers, id) === undefined);
  return (
    <ol className={styles.answered}>
      {done.map(({ id, headline }) => {
        const { answer, words } = answers[id] ?? nothingGiven;
        return (
          <li key={id}>
            <span>
              <strong>{headline}</strong>
              <span className={styles.note}>
                {answer !== null && t(`decided.matter.${answer}`)}
                {words.trim() !== "" && `: “${words.trim()}”`}
              </span>
            </span>
            <button
              type="button"
              aria-label={t("decide.matter.change.of", { matter: headline })}
              onClick={() => onChange(id)}
            >
              {t("decide.matter.change")}
            </button>
          </li>
        );
      })}
    </ol>
  );
};

/** Which matter is asked: the one gone back to, else the first without an answer. */
const useWalk = ({ matters, answers, onAnswers }: Props) => {
  const [back, setBack] = useState<string | null>(null);
  const [tried, setTried] = useState(false);
  const [follows, setFollows] = useState(false);
  const open = openOf(matters, answers);
  const asked = matters.find(({ id }) => id === back) ?? open[0];
  const change = (given: Given): Answers => ({ ...answers, ...(asked && { [asked.id]: given }) });
  const goOn = (given: Given): void => {
    if (asked === undefined) return;
    const next = change(given);
    onAnswers(next);
    setFollows(true);
    const lacks = lackOf(matters, next, asked.id) !== undefined;
    // It stays in sight while it lacks its words, whatever else is open.
    setBack(lacks ? asked.id : null);
    setTried(lacks);
  };
  const type = (given: Given): void => {
    setBack(asked?.id ?? null);
    onAnswers(change(given));
  };
  const goBack = (id: string): void => {
    setFollows(true);
    setBack(id);
  };
  return { asked, tried, follows, goOn, type, goBack };
};

/** What stops the money and what can hurt somebody, gone through one matter at a time with what speaks of it in sight. */
export const Walk = (props: Props) => {
  const t = useText();
  const { comparison, matters, answers } = props;
  const { asked, tried, follows, goOn, type, goBack } = useWalk(props);
  return (
    <div className={styles.safety}>
      <h3>{t("decide.matters", { count: matters.length })}</h3>
      {asked === undefined ? (
        <p className={styles.note}>{t("decide.matters.done")}</p>
      ) : (
        <OneMatter
          key={asked.id}
          matter={asked}
          number={matters.indexOf(asked) + 1}
          of={matters.length}
          comparison={comparison}
          follows={follows}
          given={answers[asked.id] ?? nothingGiven}
          lack={tried ? lackOf(matters, answers, asked.id) : undefined}
          onType={type}
          onAnswer={goOn}
        />
      )}
      <Answered matters={matters.filter((one) => one !== asked)} answers={answers} onChange={goBack} />
    </div>
  );
};
