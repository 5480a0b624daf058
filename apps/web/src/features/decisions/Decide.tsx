import { Button, Checkbox, Textarea, TextInput } from "@mantine/core";
import type { DecisionRequest, SummarySeen } from "@evenhand/shared/http/summaries";
import type { Summary } from "@evenhand/shared/summary";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { parseMoney } from "../../ui/money";
import { Choices } from "../../entities/answer/Choices";
import { DecisionProblem } from "./DecisionProblem";
import { acknowledgementsOf, type Answers, leftOpen } from "./matter-answers";
import { Matters } from "./Matters";
import styles from "./Summary.module.css";

interface Props {
  readonly summary: Summary;
  readonly seen: SummarySeen;
  readonly onDecided: () => void;
}

type Kind = DecisionRequest["decision"];
const kinds = ["approve", "counter", "decline"] as const satisfies readonly Kind[];
/** Approve, counter or decline exactly what is on this page. */
export const Decide = ({ summary, seen, onDecided }: Props) => {
  const t = useText();
  const queries = useQueryClient();
  const [kind, setKind] = useState<Kind>();
  const [answers, setAnswers] = useState<Answers>({});
  const [price, setPrice] = useState("");
  const [conditions, setConditions] = useState("");
  const [understood, setUnderstood] = useState(false);
  const matters = summary.openMatters;
  const decide = useMutation({
    mutationFn: (decision: Kind) => {
      const money = decision === "counter" ? parseMoney(price, "USD") : null;
      const text = conditions.trim();
      return call("summaries.decide", {
        params: { id: seen.id },
        body: {
          decision,
          hash: seen.hash,
          acknowledgements: decision === "decline" ? [] : acknowledgementsOf(matters, answers),
          ...(money === null ? {} : { price: money }),
          ...(text === "" ? {} : { conditions: text }),
        },
      });
    },
    onSuccess: onDecided,
    onSettled: () => queries.invalidateQueries(),
  });
  const open = leftOpen(matters, answers);
  const ready =
    (kind === "approve" && open === 0 && understood) ||
    (kind === "counter" && (parseMoney(price, "USD") !== null || conditions.trim() !== "")) ||
    kind === "decline";
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (kind !== undefined) decide.mutate(kind);
  };
  return (
    <div className="no-print">
      <Panel title={t("decide.title")} hint={t("decide.hint")}>
        <form className={styles.form} onSubmit={submit}>
          <Choices
            stacked
            legend={t("decide.title")}
            name="decision"
            value={kind}
            options={kinds.map((value) => ({
              value,
              label: t(`decide.${value}`),
              hint: t(`decide.${value}.hint`),
            }))}
            onChange={setKind}
          />
          {kind === "approve" && matters.length > 0 && (
            <Matters summary={summary} answers={answers} onAnswers={setAnswers} />
          )}
          {kind === "counter" && (
            <div className={styles.row}>
              <TextInput
                size="md"
                inputMode="decimal"
                label={t("decide.price")}
                leftSection="$"
                value={price}
                onChange={(event) => setPrice(event.currentTarget.value)}
              />
              <Textarea
                size="md"
                autosize
                label={t("decide.conditions")}
                description={t("decide.conditions.hint")}
                value={conditions}
                onChange={(event) => setConditions(event.currentTarget.value)}
              />
            </div>
          )}
          {kind === "approve" && (
            <Checkbox
              size="md"
              label={t("decide.understood")}
              checked={understood}
              onChange={(event) => setUnderstood(event.currentTarget.checked)}
            />
          )}
          {decide.error !== null && <DecisionProblem error={decide.error} comparison={seen.comparison} />}
          {kind !== undefined && (
            <div>
              <Button type="submit" size="md" disabled={!ready} loading={decide.isPending}>
                {t(`decide.${kind}.do`)}
              </Button>
              {kind === "approve" && open > 0 && (
                <output className={styles.note}>{t("decide.matters.left", { count: open })}</output>
              )}
            </div>
          )}
        </form>
      </Panel>
    </div>
  );
};
