import type { Money } from "@evenhand/shared/identifier";
import type { AnswerCost, AnsweredMatter, MatterLine } from "@evenhand/shared/page-one";
import type { SettlementState } from "@evenhand/shared/settlement";
import { memo, type ReactNode, useState } from "react";
import { useIntl } from "react-intl";
import { Severity } from "../../../entities/matter/Severity";
import { useLineStates } from "../../../entities/release/queries";
import { useDuration } from "../../../entities/time/use-duration";
import { capital } from "../../../entities/sheet/sheet-index";
import { useText } from "../../../strings/text";
import { dotted } from "../../../ui/dotted";
import { moneyText } from "../../../ui/money";
import { OutcomeSign } from "../../../ui/OutcomeSign";
import styles from "./AnswerMatter.module.css";
import { likelyOf } from "./likely-of";
import { MatterPictures } from "./MatterPictures";

interface Props {
  readonly one: AnsweredMatter;
  readonly number: number;
  readonly onOpen: (at: number) => void;
  readonly onMatter: (place: number) => void;
  /** Absent while it is asked for, and for whoever is shown none. */
  readonly cost?: AnswerCost;
  /** Of what nobody knows there is nothing to quote, and how grave it could be stands in its lines. */
  readonly unknown?: boolean;
  readonly comparison: string;
  /** Whoever buys is shown how its lines stand with the dealer. */
  readonly buys: boolean;
  /** How the matter stands with the dealer, and what can be done about that; absent for whoever is no party to it. */
  readonly settling?: (one: AnsweredMatter) => ReactNode;
}

/** What came of the line; what was laid before the dealer is never said to differ and no more. */
const useLineWords = (line: MatterLine, settled: SettlementState | undefined): string => {
  const t = useText();
  const { outcome, severity, found } = line;
  const grave = severity === null ? null : t(found ? `severity.${severity}` : `at-stake.${severity}`);
  const words = t(`outcome.${outcome}`);
  const came =
    settled === undefined
      ? words
      : t("settle.line", { outcome: words, state: t(`release.state.${settled}`) });
  return dotted([grave, came]);
};

interface LineProps extends Pick<Props, "onOpen"> {
  readonly line: MatterLine;
  readonly state: SettlementState | undefined;
}

const Line = ({ line, state, onOpen }: LineProps) => {
  const words = useLineWords(line, state);
  const { entry, place, outcome } = line;
  return (
    <li>
      <OutcomeSign outcome={outcome} size={24} />
      <span>
        <button type="button" onClick={() => onOpen(entry)}>
          {capital(place)}
        </button>
        <span>{words}</span>
      </span>
    </li>
  );
};

/** What would decide it, the question, and its lines: the gravest here, all of them in the list. */
const More = ({ one, number, comparison, buys, onOpen, onMatter }: Props) => {
  const t = useText();
  const settled = useLineStates(comparison, buys);
  const { lines, decides, question } = one.matter;
  return (
    <div className={styles.more}>
      <p>{t("answer.decides", { decides })}</p>
      <p>{t("answer.ask", { question })}</p>
      <MatterPictures entries={lines} />
      <ul className={styles.lines}>
        {one.lines.map((line) => (
          <Line key={line.entry} line={line} state={settled.get(line.entry)} onOpen={onOpen} />
        ))}
      </ul>
      {lines.length > one.lines.length && (
        <p>
          <button type="button" className={styles.opener} onClick={() => onMatter(number - 1)}>
            {t("answer.lines.all", { count: lines.length })}
          </button>
        </p>
      )}
    </div>
  );
};

/** In the inspector's own words, the gravest; the rest with the lines. */
const QUOTED = 1;

const Quotes = ({ notes, open }: Pick<AnsweredMatter, "notes"> & { readonly open: boolean }) =>
  (open ? notes : notes.slice(0, QUOTED)).map(({ place, words }) => (
    <blockquote key={words} className={styles.quote}>
      “{words}” <cite>{place}</cite>
    </blockquote>
  ));

const useNextWords = (
  { next }: AnsweredMatter["matter"],
  likely: Money | undefined,
  unknown: boolean,
): string => {
  const t = useText();
  const intl = useIntl();
  const duration = useDuration();
  const words =
    next.minutes === undefined
      ? next.words
      : t("answer.next.minutes", { next: next.words, time: duration(next.minutes) });
  return likely === undefined
    ? words
    : t(unknown ? "answer.next.cost.unknown" : "answer.next.cost", {
        next: words,
        amount: moneyText(intl, likely),
      });
};

interface FootProps extends Pick<Props, "one"> {
  /** What the matter is likely to add to the cost, where that is known. */
  readonly likely?: Money;
  readonly unknown: boolean;
  readonly open: boolean;
  readonly onToggle: () => void;
}

const Foot = ({ one: { matter }, likely, unknown, open, onToggle }: FootProps) => {
  const t = useText();
  const shown = t(open ? "answer.lines.close" : "answer.lines", { count: matter.lines.length });
  return (
    <p className={styles.foot}>
      <strong>{useNextWords(matter, likely, unknown)}</strong>
      <button
        type="button"
        className={styles.opener}
        aria-expanded={open}
        onClick={onToggle}
        aria-label={t("answer.lines.of", { shown, headline: matter.headline })}
      >
        {shown}
      </button>
    </p>
  );
};

/** One matter: what is wrong, what was found, the inspector's own words, what to do; its lines one press behind. */
export const AnswerMatter = memo((props: Props) => {
  const [open, setOpen] = useState(false);
  const { one, number, cost, unknown = false, settling } = props;
  const likely = likelyOf(cost, one.matter);
  const { severity, headline, found } = one.matter;
  return (
    <li className={styles.matter} data-severity={severity} data-unknown={unknown}>
      <span className={styles.number} aria-hidden="true">
        {number}
      </span>
      <div className={styles.body}>
        <div className={styles.head}>
          <h3>{headline}</h3>
          <Severity severity={severity} unknown={unknown} />
        </div>
        <p className={styles.found}>{found}</p>
        {(open || !unknown) && <Quotes notes={one.notes} open={open} />}
        <Foot one={one} likely={likely} unknown={unknown} open={open} onToggle={() => setOpen(!open)} />
        {open && <More {...props} />}
        {settling?.(one)}
      </div>
    </li>
  );
});
AnswerMatter.displayName = "AnswerMatter";
