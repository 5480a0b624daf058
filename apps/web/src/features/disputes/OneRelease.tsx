import type { Release, ReleasedFinding } from "@evenhand/shared/http/releases";
import { useQuery } from "@tanstack/react-query";
import { useText } from "../../strings/text";
import { dotted } from "../../ui/dotted";
import { Notice } from "../../ui/Notice";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { Tag } from "../../ui/Page";
import { EntryFigures } from "../../entities/comparison/EntryFigures";
import { useSeverityWords } from "../../entities/comparison/use-severity-words";
import { answerWords } from "../../entities/sheet/answer-text";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import styles from "./Disputes.module.css";
import { Settle } from "./Settle";
import { isOver, isTurnOf, pressesOf } from "./settle-form";
import { Standing } from "./Standing";
import { Thread } from "./Thread";
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
  const words = t(`outcome.${outcome}`);
  const ended = isOver(release.state)
    ? t("settle.line", { outcome: words, state: t(`release.state.${release.state}`) })
    : words;
  return (
    <div className={styles.facing}>
      <Side side="stated" release={release} finding={release.a} />
      <div className={styles.spine}>
        <OutcomeSign outcome={outcome} />
        {ended}
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
        <Tag strong={!isOver(state)}>{t(`release.state.${state}`)}</Tag>
      </p>
    </div>
  );
};

/** What a revision or another look found of it. */
const LookedAgain = ({ release }: Props) => {
  const t = useText();
  if (release.looked === null) return null;
  const { entry, b } = release.looked;
  return (
    <div>
      <p className={styles.label}>{t("settle.looked")}</p>
      {b === null ? (
        <p className={styles.grounds}>{t("settle.looked.silent")}</p>
      ) : (
        <FacingAnswers release={{ ...release, entry, b }} />
      )}
    </div>
  );
};

interface WithMoves extends Props {
  /** It is answered together with others of its matter, and by itself only if somebody wants to. */
  readonly together: boolean;
}

/** What the person can do about it: their turn in sight, all else folded away. */
const Moves = ({ release, together }: WithMoves) => {
  const t = useText();
  const { state, as } = release;
  if (pressesOf(state, as).length === 0) return null;
  if (isTurnOf(release) && !together) return <Settle releases={[release]} />;
  return (
    <details className={styles.more}>
      <summary>{t(isTurnOf(release) ? "settle.alone" : "settle.still")}</summary>
      <Settle releases={[release]} />
    </details>
  );
};

/** One disputed item: the two answers as facing pages, the figures, what was said, and what can be done. */
export const OneRelease = ({ release, together }: WithMoves) => {
  const t = useText();
  const { figures, limits = [] } = release.entry;
  return (
    <div id={`release-${release.id}`} className={styles.release}>
      <Head release={release} />
      <FacingAnswers release={release} />
      {figures?.of === "reading" && <EntryFigures figures={figures} limits={limits} />}
      <LookedAgain release={release} />
      <Thread release={release} />
      {release.state === "price-offered" && release.entry.severity === "danger" && (
        <Notice kind="caution">
          <p>{t("settle.caution")}</p>
        </Notice>
      )}
      {!together && <Standing release={release} />}
      <Moves release={release} together={together} />
    </div>
  );
};
