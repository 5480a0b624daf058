import { Button } from "@mantine/core";
import type { Decision, DecisionAnswer } from "@evenhand/shared/http/summaries";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { useCurrency } from "../../entities/car/use-currency";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { LongTextField, TextField } from "../../ui/Fields";
import { parseMoney } from "../../ui/money";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { endOfDay } from "./end-of-day";
import { OfferFacts } from "./OfferFacts";
import styles from "./Summary.module.css";
import { UntilField } from "./UntilField";

const answers = [
  { given: "accept", variant: "filled" },
  { given: "refuse", variant: "default" },
] as const;

interface Props {
  readonly decision: Decision;
}

const useAnswer = ({ decision }: Props) => {
  const queries = useQueryClient();
  const [note, setNote] = useState("");
  const answer = useMutation({
    mutationFn: (given: DecisionAnswer) =>
      call("decisions.answer", {
        params: { id: decision.id },
        ifMatch: decision.revision,
        body: { ...given, ...(note.trim() === "" ? {} : { note: note.trim() }) },
      }),
    onSettled: () => queries.invalidateQueries(),
  });
  return { note, setNote, answer };
};

interface BackProps {
  /** Absent while it is not known. */
  readonly currency: string | undefined;
  readonly sending: boolean;
  readonly onSend: (answer: DecisionAnswer) => void;
}

/** What is sent of an offer as typed; `null` while it offers nothing, or stands through no day. */
const counterOf = (typed: Typed, currency: string | undefined): DecisionAnswer | null => {
  if (currency === undefined) return null;
  const price = parseMoney(typed.price, currency);
  const conditions = typed.conditions.trim();
  const until = endOfDay(typed.until);
  if (until === null || (price === null && conditions === "")) return null;
  return {
    answer: "counter",
    until,
    ...(price === null ? {} : { price }),
    ...(conditions === "" ? {} : { conditions }),
  };
};

interface Typed {
  readonly price: string;
  readonly conditions: string;
  readonly until: string;
}

/** The dealer's own price, conditions and day, in place of the buyer's. */
const CounterBack = ({ currency, sending, onSend }: BackProps) => {
  const t = useText();
  const [typed, setTyped] = useState<Typed>({ price: "", conditions: "", until: "" });
  const change = (more: Partial<Typed>): void => setTyped({ ...typed, ...more });
  const counter = counterOf(typed, currency);
  return (
    <details>
      <summary>{t("counter.back")}</summary>
      <div className={styles.form}>
        <MoneyLine currency={currency} value={typed.price} onChange={(price) => change({ price })} />
        <LongTextField
          label={t("decide.conditions")}
          value={typed.conditions}
          onChange={(conditions) => change({ conditions })}
        />
        <UntilField value={typed.until} onChange={(until) => change({ until })} />
        <div>
          <Button
            disabled={counter === null}
            loading={sending}
            onClick={() => counter !== null && onSend(counter)}
          >
            {t("counter.back.do")}
          </Button>
        </div>
      </div>
    </details>
  );
};

const MoneyLine = ({
  currency,
  value,
  onChange,
}: Pick<BackProps, "currency"> & {
  readonly value: string;
  readonly onChange: (value: string) => void;
}) => {
  const t = useText();
  return (
    <TextField
      inputMode="decimal"
      label={t("decide.price")}
      rightSection={currency}
      rightSectionWidth={56}
      value={value}
      onChange={onChange}
    />
  );
};

const Answers = ({ answer }: Pick<ReturnType<typeof useAnswer>, "answer">) => {
  const t = useText();
  return (
    <div className={styles.answers}>
      {answers.map(({ given, variant }) => (
        <Button
          key={given}
          variant={variant}
          loading={answer.isPending && answer.variables.answer === given}
          onClick={() => answer.mutate({ answer: given })}
        >
          {t(`counter.${given}`)}
        </Button>
      ))}
    </div>
  );
};

/** A counter waits for the dealer, who accepts or refuses it, or counters back. */
export const AnswerCounter = ({ decision }: Props) => {
  const t = useText();
  const { note, setNote, answer } = useAnswer({ decision });
  const currency = useCurrency(decision.vehicle);
  return (
    <div className={`${styles.form} ${styles.counter}`} id={`decision-${decision.id}`}>
      <OfferFacts price={decision.price} conditions={decision.conditions} until={decision.until} />
      {answer.error !== null && <ProblemNotice error={answer.error} />}
      <LongTextField label={t("counter.note")} value={note} onChange={setNote} />
      <Answers answer={answer} />
      <CounterBack
        currency={decision.price?.currency ?? currency}
        sending={answer.isPending && answer.variables.answer === "counter"}
        onSend={answer.mutate}
      />
    </div>
  );
};
