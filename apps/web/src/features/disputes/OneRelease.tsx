import type { Release, ReleasedFinding } from "@evenhand/shared/http/releases";
import { useQuery } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { dotted } from "../../ui/dotted";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { Tag } from "../../ui/Page";
import { EntryFigures } from "../../entities/comparison/EntryFigures";
import { useSeverityWords } from "../../entities/comparison/use-severity-words";
import { answerWords } from "../../entities/sheet/answer-text";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { AnswerRelease } from "./AnswerRelease";
import styles from "./Disputes.module.css";
import { useReleaseWords } from "./use-release-words";

interface Props {
  readonly release: Release;
}

interface SideProps extends Props {
  readonly side: "stated" | "found";
  readonly finding: ReleasedFinding | null;
}

const Side = ({ side, release, finding }: SideProps) => {
  const t = useText();
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  const item = index?.items.get(release.entry.item);
  if (!finding) {
    return (
      <div className={styles[side]}>
        <p className={styles.label}>{t(`side.${side}`)}</p>
        <p className={styles.grounds}>{t(`entry.silent.${side}`)}</p>
      </div>
    );
  }
  const { firmness, basis, instrumentName, note } = finding;
  return (
    <div className={styles[side]}>
      <p className={styles.label}>{t(`side.${side}`)}</p>
      <p className={styles.answer}>
        {index && answerWords({ index, item, scales: [] }, finding.answer).text}
      </p>
      <p className={styles.grounds}>
        {dotted([t(`firmness.${firmness}`), t(`basis.${basis}`), instrumentName])}
      </p>
      {note !== undefined && <blockquote className={styles.note}>“{note}”</blockquote>}
    </div>
  );
};

/** The two answers as facing pages, what came of them between. */
const FacingAnswers = ({ release }: Props) => {
  const t = useText();
  const { outcome } = release.entry;
  return (
    <div className={styles.facing}>
      <Side side="stated" release={release} finding={release.a} />
      <div className={styles.spine}>
        <OutcomeSign outcome={outcome} />
        {t(`outcome.${outcome}`)}
      </div>
      <Side side="found" release={release} finding={release.b} />
    </div>
  );
};

/** Which item, how grave, and how it stands with the dealer. */
const Head = ({ release }: Props) => {
  const t = useText();
  const words = useReleaseWords();
  const grave = useSeverityWords()(release.entry);
  const { state } = release;
  return (
    <div className={styles.head}>
      <h3>{words(release)}</h3>
      <p>
        {grave !== null && `${grave} · `}
        <Tag strong={state === "released"}>{t(`release.state.${state}`)}</Tag>
      </p>
    </div>
  );
};

/** What the dealer answered, when, and why. */
const GivenAnswer = ({ release: { state, reason, answeredAt } }: Props) => {
  const t = useText();
  const intl = useIntl();
  if (reason === null) return null;
  return (
    <p>
      <strong>{t(`release.state.${state}`)}</strong>
      {answeredAt !== null && `, ${intl.formatDate(answeredAt, { dateStyle: "long" })}`}: {reason}
    </p>
  );
};

interface WithAnswer extends Props {
  readonly mayAnswer: boolean;
}

/** The dealer's answer: given, to be given here, or waited for. */
const DealersAnswer = ({ release, mayAnswer }: WithAnswer) => {
  const t = useText();
  if (release.state !== "released") return <GivenAnswer release={release} />;
  if (mayAnswer) return <AnswerRelease release={release} />;
  return <p className={styles.grounds}>{t("released.waiting")}</p>;
};

/** One disputed item: the two answers as facing pages, the figures, and the dealer's answer. */
export const OneRelease = ({ release, mayAnswer }: WithAnswer) => {
  const { figures, limits = [] } = release.entry;
  return (
    <div id={`release-${release.id}`} className={styles.release}>
      <Head release={release} />
      <FacingAnswers release={release} />
      {figures?.of === "reading" && <EntryFigures figures={figures} limits={limits} />}
      <DealersAnswer release={release} mayAnswer={mayAnswer} />
    </div>
  );
};
