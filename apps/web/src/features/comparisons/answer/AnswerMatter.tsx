import type { AnsweredMatter } from "@evenhand/matters/answer";
import { useState } from "react";
import { useDuration } from "../../../entities/time/use-duration";
import type { Row } from "../../../entities/comparison/model";
import { useSeverityWords } from "../../../entities/comparison/use-severity-words";
import { capital } from "../../../entities/sheet/sheet-index";
import { useText } from "../../../strings/text";
import { OutcomeSign } from "../../../ui/OutcomeSign";
import styles from "./AnswerMatter.module.css";

interface LinesProps {
  readonly rows: readonly Row[];
  readonly onOpen: (at: number) => void;
}

const Lines = ({ rows, onOpen }: LinesProps) => {
  const t = useText();
  const severityWords = useSeverityWords();
  return (
    <ul className={styles.lines}>
      {rows.map((row) => (
        <li key={row.at}>
          <OutcomeSign outcome={row.entry.outcome} size={24} />
          <span>
            <button type="button" onClick={() => onOpen(row.at)}>
              {capital([row.name, row.place].filter((part) => part !== "").join(", "))}
            </button>
            <span>
              {[severityWords(row.entry), t(`outcome.${row.entry.outcome}`)].filter(Boolean).join(" · ")}
            </span>
          </span>
        </li>
      ))}
    </ul>
  );
};

interface Props {
  readonly one: AnsweredMatter;
  readonly number: number;
  readonly rows: readonly Row[];
  readonly onOpen: (at: number) => void;
  /** Of what nobody knows there is nothing to quote, and how grave it could be stands in its lines. */
  readonly unknown?: boolean;
}

const QUOTED = 2;

/** One matter: what is wrong, what was found, the inspector's own words, what to do; its lines one press behind. */
export const AnswerMatter = ({ one, number, rows, onOpen, unknown = false }: Props) => {
  const t = useText();
  const duration = useDuration();
  const [open, setOpen] = useState(false);
  const { matter, notes } = one;
  const { severity, headline, found, next, lines, decides, question } = matter;
  const shown = t(open ? "answer.lines.close" : "answer.lines", { count: lines.length });
  const quoted = open ? notes : notes.slice(0, QUOTED);
  return (
    <li className={styles.matter} data-severity={severity} data-unknown={unknown}>
      <span className={styles.number} aria-hidden="true">
        {number}
      </span>
      <div className={styles.body}>
        <div className={styles.head}>
          <h3>{headline}</h3>
          <span className={styles.grave}>{t(unknown ? `at-stake.${severity}` : `severity.${severity}`)}</span>
        </div>
        <p className={styles.found}>{found}</p>
        {quoted.map(({ place, words }) => (
          <blockquote key={words} className={styles.quote}>
            {open && <span>{capital(place)}: </span>}“{words}”
          </blockquote>
        ))}
        <p className={styles.foot}>
          <strong>
            {next.minutes === undefined
              ? next.words
              : t("answer.next.minutes", { next: next.words, time: duration(next.minutes) })}
          </strong>
          <button
            type="button"
            className={styles.opener}
            aria-expanded={open}
            onClick={() => setOpen(!open)}
            aria-label={t("answer.lines.of", { shown, headline })}
          >
            {shown}
          </button>
        </p>
        {open && (
          <div className={styles.more}>
            <p>{t("answer.decides", { decides })}</p>
            <p>{t("answer.ask", { question })}</p>
            <Lines rows={lines.flatMap((at) => rows[at] ?? [])} onOpen={onOpen} />
          </div>
        )}
      </div>
    </li>
  );
};
