import { Button, Textarea } from "@mantine/core";
import type { Release, ReleasedFinding } from "@evenhand/shared/http/releases";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { Panel, Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { EntryFigures } from "../../entities/comparison/EntryFigures";
import { useSeverityWords } from "../../entities/comparison/use-severity-words";
import { answerWords } from "../../entities/sheet/answer-text";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import styles from "./Disputes.module.css";
import { useReleaseWords } from "./ReleaseLine";

interface SideProps {
  readonly side: "stated" | "found";
  readonly release: Release;
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
  const grounds = [
    t(`firmness.${finding.firmness}`),
    t(`basis.${finding.basis}`),
    finding.instrumentName,
    finding.note,
  ].filter((part) => part !== null && part !== undefined);
  return (
    <div className={styles[side]}>
      <p className={styles.label}>{t(`side.${side}`)}</p>
      <p className={styles.answer}>
        {index && answerWords({ index, item, scales: [] }, finding.answer).text}
      </p>
      <p className={styles.grounds}>{grounds.join(" · ")}</p>
    </div>
  );
};

const Answering = ({ release }: { readonly release: Release }) => {
  const t = useText();
  const queries = useQueryClient();
  const [reason, setReason] = useState("");
  const answer = useMutation({
    mutationFn: (given: "accept" | "contest") =>
      call("releases.answer", {
        params: { id: release.id },
        ifMatch: release.revision,
        body: { answer: given, reason: reason.trim() },
      }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["releases"] }),
  });
  const wordless = reason.trim() === "";
  return (
    <div className={styles.form}>
      {answer.error !== null && <ProblemNotice error={answer.error} />}
      <Textarea
        size="md"
        autosize
        minRows={2}
        label={t("answer.reason")}
        description={t("answer.reason.hint")}
        value={reason}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      <div className={styles.buttons}>
        <Button
          disabled={wordless}
          loading={answer.isPending && answer.variables === "accept"}
          onClick={() => answer.mutate("accept")}
        >
          {t("answer.accept")}
        </Button>
        <Button
          variant="default"
          disabled={wordless}
          loading={answer.isPending && answer.variables === "contest"}
          onClick={() => answer.mutate("contest")}
        >
          {t("answer.contest")}
        </Button>
      </div>
    </div>
  );
};

/** One disputed item: the two answers as facing pages, the figures, and the dealer's answer. */
export const OneRelease = ({
  release,
  mayAnswer,
}: {
  readonly release: Release;
  readonly mayAnswer: boolean;
}) => {
  const t = useText();
  const intl = useIntl();
  const words = useReleaseWords();
  const grave = useSeverityWords()(release.entry);
  const { entry, state, reason, answeredAt } = release;
  return (
    <div id={`release-${release.id}`} style={{ paddingBlock: "0.5rem" }}>
      <Panel>
        <div className={styles.release}>
          <div className={styles.head}>
            <h2>{words(release)}</h2>
            <p>
              {grave !== null && `${grave} · `}
              <Tag strong={state === "released"}>{t(`release.state.${state}`)}</Tag>
            </p>
          </div>
          <div className={styles.facing}>
            <Side side="stated" release={release} finding={release.a} />
            <div className={styles.spine}>
              <OutcomeSign outcome={entry.outcome} />
              {t(`outcome.${entry.outcome}`)}
            </div>
            <Side side="found" release={release} finding={release.b} />
          </div>
          {entry.figures?.of === "reading" && (
            <EntryFigures figures={entry.figures} limits={entry.limits ?? []} />
          )}
          {state !== "released" && reason !== null && (
            <p>
              <strong>{t(`release.state.${state}`)}</strong>
              {answeredAt !== null && `, ${intl.formatDate(answeredAt, { dateStyle: "long" })}`}: {reason}
            </p>
          )}
          {state === "released" && mayAnswer && <Answering release={release} />}
          {state === "released" && !mayAnswer && <p className={styles.grounds}>{t("released.waiting")}</p>}
        </div>
      </Panel>
    </div>
  );
};
