import { Button } from "@mantine/core";
import { useMutation } from "@tanstack/react-query";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { KeyboardEvent } from "react";
import { useText, type Text } from "../../strings/text";
import { Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { answerWords } from "../../entities/sheet/answer-text";
import { capital, itemWords, positionWords, type SheetIndex } from "../../entities/sheet/sheet-index";
import { Editor } from "./Editor";
import type { Doubt, Proposal } from "./review";
import styles from "./Review.module.css";
import { findingOf, isDecided, type Standing } from "./standing";
import { forgetLine, type Reviewing } from "./use-review";

export interface Going {
  readonly reportId: string;
  readonly report: Report;
  readonly index: SheetIndex;
  readonly reviewing: Reviewing;
  readonly selected: string | undefined;
  readonly editing: string | undefined;
  readonly onSelect: (key: string) => void;
  readonly onEdit: (key: string | undefined) => void;
  /** Done with it: on to the next that is open. */
  readonly onDone: (key: string) => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLElement>) => void;
}

const doubtWords = (t: Text, doubt: Doubt): string => {
  switch (doubt.is) {
    case "inferred":
      return t("reading.doubt.inferred");
    case "heard":
      return t("reading.doubt.heard", { words: doubt.words });
    case "unsure":
      return t("reading.doubt.unsure");
    case "refused":
      return t("reading.doubt.refused", { why: doubt.why });
    case "problem":
      return t("reading.doubt.problem", { why: doubt.why });
  }
};

interface Props extends Going {
  readonly proposal: Proposal;
}
interface Stood extends Props {
  readonly finding: Finding | null;
  readonly standing: Standing;
}

/** Of what it is said, and what. */
const Said = ({ report, index, reviewing, proposal, finding }: Stood) => {
  const t = useText();
  if (finding === null)
    return (
      <span className={styles.empty}>
        {proposal.item === null
          ? t("reading.nothing")
          : t("reading.nothing.of", { item: itemWords(index, proposal.item) })}
      </span>
    );
  const item = index.items.get(finding.item);
  const where = positionWords(index, item, finding.position);
  const scales = [...report.scales, ...reviewing.scales];
  const { text, code } = answerWords({ index, item, scales }, finding.answer);
  return (
    <>
      <span className={styles.item}>
        {capital([itemWords(index, finding.item), where].filter((one) => one !== "").join(", "))}
      </span>{" "}
      <strong data-code={code}>{text}</strong>{" "}
      {finding.firmness !== "asserted" && <Tag>{t(`firmness.${finding.firmness}`)}</Tag>}
    </>
  );
};

/** What wants a look before it is accepted. */
const Doubts = ({ report, index, reviewing, proposal, finding, standing }: Stood) => {
  const t = useText();
  const there = finding && reviewing.at(finding.item, finding.position);
  const context = { index, item: index.items.get(finding?.item ?? ""), scales: report.scales };
  return (
    <>
      {proposal.doubts.map((doubt) => (
        <p key={doubtWords(t, doubt)} className={styles.doubt} data-is={doubt.is}>
          {doubtWords(t, doubt)}
        </p>
      ))}
      {standing === "other" && there && (
        <p className={styles.doubt} data-is="other">
          {t(there.firmness === finding.firmness ? "reading.other" : "reading.other.firmness", {
            answer: answerWords(context, there.answer).text,
            firmness: t(`firmness.${there.firmness}`),
          })}
        </p>
      )}
    </>
  );
};

/** A line that was settled before; once forgotten that stands there instead. */
const Remembered = ({ reportId, proposal }: Stood) => {
  const t = useText();
  const forget = useMutation({ mutationFn: () => forgetLine(reportId, proposal) });
  if (!proposal.settled) return null;
  return (
    <div className={styles.doubt}>
      {t(forget.isSuccess ? "reading.settled.forgotten" : "reading.settled")}{" "}
      {!forget.isSuccess && (
        <Button variant="subtle" size="compact-xs" loading={forget.isPending} onClick={() => forget.mutate()}>
          {t("reading.settled.forget")}
        </Button>
      )}
      {forget.error && <ProblemNotice error={forget.error} />}
    </div>
  );
};

/** What was done with it, and back. */
const Done = ({ reviewing, proposal, standing }: Stood & { readonly standing: "accepted" | "rejected" }) => {
  const t = useText();
  return (
    <div className={styles.buttons}>
      <span className={styles.state} data-is={standing}>
        {t(`reading.is.${standing}`)}
      </span>
      {reviewing.deeds.has(proposal.key) && (
        <Button variant="subtle" size="compact-sm" onClick={() => void reviewing.takeBack(proposal)}>
          {t("reading.take-back")}
        </Button>
      )}
    </div>
  );
};

const Choices = ({ reviewing, proposal, finding, standing, onEdit, onDone }: Stood) => {
  const t = useText();
  const { key } = proposal;
  const after = (deed: () => void) => (): void => {
    onDone(key);
    deed();
  };
  return (
    <div className={styles.buttons}>
      {finding !== null && standing !== "wrong" && (
        <Button size="compact-sm" variant="light" onClick={after(() => void reviewing.accept([proposal]))}>
          {t(standing === "other" ? "reading.replace" : "reading.accept")}
        </Button>
      )}
      <Button size="compact-sm" variant="default" onClick={() => onEdit(key)}>
        {t(finding === null ? "reading.by-hand" : "reading.change")}
      </Button>
      <Button size="compact-sm" variant="subtle" onClick={after(() => reviewing.reject(proposal))}>
        {t("reading.reject")}
      </Button>
    </div>
  );
};

/** What may be done with it, or the fields to put it right. */
const Deciding = (stood: Stood) => {
  const { report, index, reviewing, proposal, finding, standing, editing, onEdit, onDone } = stood;
  if (editing !== proposal.key)
    return isDecided(standing) ? <Done {...stood} standing={standing} /> : <Choices {...stood} />;
  const change = (changed: Finding): void => {
    onEdit(undefined);
    onDone(proposal.key);
    void reviewing.change(proposal, changed);
  };
  const shown = { report, index, proposal, finding };
  return <Editor {...shown} onCancel={() => onEdit(undefined)} onDone={change} />;
};

/** One proposal: what it says, what is doubtful of it, and what may be done. */
export const ProposalCard = (props: Props) => {
  const { reviewing, proposal, selected, onSelect, onKeyDown } = props;
  const { key } = proposal;
  const standing = reviewing.standing(proposal);
  const stood = { ...props, finding: findingOf(proposal, reviewing.deeds), standing };
  const isSelected = selected === key;
  return (
    <li className={styles.proposal} data-standing={standing} data-selected={isSelected}>
      <button
        id={`proposal-${key}`}
        type="button"
        className={styles.said}
        // The list is walked with the keys; its lines take the focus one at a time.
        tabIndex={isSelected ? 0 : -1}
        aria-current={isSelected}
        onFocus={() => onSelect(key)}
        onKeyDown={onKeyDown}
      >
        <Said {...stood} />
      </button>
      <Doubts {...stood} />
      <Remembered {...stood} />
      <Deciding {...stood} />
    </li>
  );
};
