import { Button } from "@mantine/core";
import type { Decision } from "@evenhand/shared/http/summaries";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { LongTextField } from "../../ui/Fields";
import { moneyText } from "../../ui/money";
import { Facts } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Summary.module.css";

const answers = [
  { given: "accept", variant: "filled" },
  { given: "refuse", variant: "default" },
] as const;

interface Props {
  readonly decision: Decision;
}

/** What the buyer asks for: a price, conditions, or both. */
const Asked = ({ decision: { price, conditions } }: Props) => {
  const t = useText();
  const intl = useIntl();
  return (
    <Facts
      rows={[
        [t("decide.price"), price === null ? t("counter.no-price") : moneyText(intl, price)],
        [t("decide.conditions"), conditions ?? t("counter.no-conditions")],
      ]}
    />
  );
};

const useAnswer = ({ decision }: Props) => {
  const queries = useQueryClient();
  const [note, setNote] = useState("");
  const answer = useMutation({
    mutationFn: (given: (typeof answers)[number]["given"]) =>
      call("decisions.answer", {
        params: { id: decision.id },
        ifMatch: decision.revision,
        body: { answer: given, ...(note.trim() === "" ? {} : { note: note.trim() }) },
      }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["decisions"] }),
  });
  return { note, setNote, answer };
};

/** A counter waits for the dealer, who accepts or refuses it. */
export const AnswerCounter = ({ decision }: Props) => {
  const t = useText();
  const { note, setNote, answer } = useAnswer({ decision });
  return (
    <div className={`${styles.form} ${styles.counter}`} id={`decision-${decision.id}`}>
      <Asked decision={decision} />
      {answer.error !== null && <ProblemNotice error={answer.error} />}
      <LongTextField label={t("counter.note")} value={note} onChange={setNote} />
      <div className={styles.answers}>
        {answers.map(({ given, variant }) => (
          <Button
            key={given}
            variant={variant}
            loading={answer.isPending && answer.variables === given}
            onClick={() => answer.mutate(given)}
          >
            {t(`counter.${given}`)}
          </Button>
        ))}
      </div>
    </div>
  );
};
