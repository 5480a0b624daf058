import { Textarea } from "@mantine/core";
import { matterWords } from "@evenhand/decision/open-matters";
import type { Acknowledgement, MatterAnswer, Summary, SummaryItem } from "@evenhand/shared/summary";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Tag } from "../../ui/Page";
import { Choices } from "../../entities/answer/Choices";
import { capital } from "../../entities/sheet/sheet-index";
import { useItemWords } from "../../entities/sheet/item-words";
import { type Answers, needsWords } from "./matter-answers";
import styles from "./Summary.module.css";

type Matter = Summary["openMatters"][number];
const answers = ["first", "dealer", "look-again", "as-it-is"] as const satisfies readonly MatterAnswer[];

/** The lines of one item, in order. */
const byItem = (lines: readonly SummaryItem[]): readonly (readonly SummaryItem[])[] => [
  ...Map.groupBy(lines, ({ item }) => item).values(),
];

/** What speaks of a matter, each item with its places, and the way to the line itself. */
const Evidence = ({
  lines,
  comparison,
}: {
  readonly lines: Matter["lines"];
  readonly comparison: string;
}) => {
  const t = useText();
  const intl = useIntl();
  const nameOf = useItemWords();
  const said = (one: SummaryItem): string => {
    const place = nameOf.position(one);
    const outcome = t(`outcome.${one.outcome}`);
    return place === "" ? outcome : t("decide.matter.place", { place, outcome });
  };
  return (
    <ul className={styles.evidence}>
      {byItem(lines).map((same) => {
        const [first] = same;
        return (
          first && (
            <li key={first.item}>
              <Link to="/comparisons/$comparison" params={{ comparison }} search={{ open: first.entry }}>
                {nameOf({ item: first.item, position: "" })}
              </Link>
              <span className={styles.note}>
                {intl.formatList([...new Set(same.map(said))], { type: "unit" })}
              </span>
            </li>
          )
        );
      })}
    </ul>
  );
};

interface OneProps {
  readonly matter: Matter;
  readonly comparison: string;
  readonly given: Answers[Acknowledgement["matter"]];
  readonly onAnswer: (given: NonNullable<OneProps["given"]>) => void;
}

const OneMatter = ({ matter: { matter, severity, lines }, comparison, given, onAnswer }: OneProps) => {
  const t = useText();
  const name = capital(matterWords(matter));
  const words = given?.words ?? "";
  return (
    <fieldset className={styles.matter}>
      <legend>{name}</legend>
      <p>
        <Tag strong>
          {t(lines.some(({ found }) => found) ? `severity.${severity}` : `at-stake.${severity}`)}
        </Tag>
      </p>
      <Evidence lines={lines} comparison={comparison} />
      <Choices
        stacked
        legend={t("decide.matter.answer", { matter: name })}
        name={`matter-${matter}`}
        value={given?.answer}
        options={answers.map((value) => ({
          value,
          label: t(value === "first" ? `decide.matter.first.${severity}` : `decide.matter.${value}`),
        }))}
        onChange={(answer) => onAnswer({ answer, words })}
      />
      {given !== undefined && (
        <Textarea
          size="md"
          autosize
          minRows={1}
          label={t("decide.matter.words", { matter: name })}
          description={t(
            needsWords(severity, given.answer) ? "decide.matter.words.needed" : "decide.matter.words.free",
          )}
          value={words}
          onChange={(event) => onAnswer({ answer: given.answer, words: event.currentTarget.value })}
        />
      )}
    </fieldset>
  );
};

interface Props {
  readonly summary: Summary;
  readonly answers: Answers;
  readonly onAnswers: (answers: Answers) => void;
}

/** What stops the money and what can hurt somebody, gone through one matter at a time with what speaks of it in sight. */
export const Matters = ({ summary, answers: given, onAnswers }: Props) => {
  const t = useText();
  return (
    <fieldset className={styles.safety}>
      <legend>{t("decide.matters", { count: summary.openMatters.length })}</legend>
      <p className={styles.note}>{t("decide.matters.hint")}</p>
      {summary.openMatters.map((one) => (
        <OneMatter
          key={one.matter}
          matter={one}
          comparison={summary.comparison.id}
          given={given[one.matter]}
          onAnswer={(answer) => onAnswers({ ...given, [one.matter]: answer })}
        />
      ))}
    </fieldset>
  );
};
