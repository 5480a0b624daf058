import { Button, Checkbox, Textarea, TextInput } from "@mantine/core";
import type { SummarySeen } from "@evenhand/shared/http/summaries";
import type { Summary } from "@evenhand/shared/summary";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useReducer, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { Choices } from "../../entities/answer/Choices";
import { DecisionProblem } from "./DecisionProblem";
import {
  decideAfter,
  decisionKinds,
  decisionOf,
  emptyDecision,
  mayDecide,
  type DecideForm,
  type DecisionKind,
} from "./decide-form";
import { leftOpen } from "./matter-answers";
import { Matters } from "./Matters";
import styles from "./Summary.module.css";

interface Props {
  readonly summary: Summary;
  readonly seen: SummarySeen;
  readonly onDecided: () => void;
}

interface PartProps {
  readonly form: DecideForm;
  readonly onChange: (change: Partial<DecideForm>) => void;
}

const useDecide = ({ summary, seen, onDecided }: Props, form: DecideForm) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (decision: DecisionKind) =>
      call("summaries.decide", {
        params: { id: seen.id },
        body: decisionOf(decision, form, summary.openMatters, seen.hash),
      }),
    onSuccess: onDecided,
    onSettled: () => queries.invalidateQueries(),
  });
};

const CounterFields = ({ form, onChange }: PartProps) => {
  const t = useText();
  return (
    <div className={styles.row}>
      <TextInput
        size="md"
        inputMode="decimal"
        label={t("decide.price")}
        leftSection="$"
        value={form.price}
        onChange={(event) => onChange({ price: event.currentTarget.value })}
      />
      <Textarea
        size="md"
        autosize
        label={t("decide.conditions")}
        description={t("decide.conditions.hint")}
        value={form.conditions}
        onChange={(event) => onChange({ conditions: event.currentTarget.value })}
      />
    </div>
  );
};

const KindChoice = ({ form, onChange }: PartProps) => {
  const t = useText();
  return (
    <Choices
      stacked
      legend={t("decide.title")}
      name="decision"
      value={form.kind}
      options={decisionKinds.map((value) => ({
        value,
        label: t(`decide.${value}`),
        hint: t(`decide.${value}.hint`),
      }))}
      onChange={(kind) => onChange({ kind })}
    />
  );
};

const Understood = ({ form, onChange }: PartProps) => {
  const t = useText();
  return (
    <Checkbox
      size="md"
      label={t("decide.understood")}
      checked={form.understood}
      onChange={(event) => onChange({ understood: event.currentTarget.checked })}
    />
  );
};

interface SendProps {
  readonly kind: DecisionKind;
  readonly ready: boolean;
  readonly sending: boolean;
  /** Matters without an answer. */
  readonly open: number;
}

const Send = ({ kind, ready, sending, open }: SendProps) => {
  const t = useText();
  return (
    <div>
      <Button type="submit" size="md" disabled={!ready} loading={sending}>
        {t(`decide.${kind}.do`)}
      </Button>
      {kind === "approve" && open > 0 && (
        <output className={styles.note}>{t("decide.matters.left", { count: open })}</output>
      )}
    </div>
  );
};

/** Approve, counter or decline exactly what is on this page. */
export const Decide = (props: Props) => {
  const t = useText();
  const { summary, seen } = props;
  const matters = summary.openMatters;
  const [form, change] = useReducer(decideAfter, emptyDecision);
  const { kind } = form;
  const decide = useDecide(props, form);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (kind !== undefined && mayDecide(form, matters)) decide.mutate(kind);
  };
  return (
    <div className="no-print">
      <Panel title={t("decide.title")} hint={t("decide.hint")}>
        <form className={styles.form} onSubmit={submit}>
          <KindChoice form={form} onChange={change} />
          {kind === "approve" && matters.length > 0 && (
            <Matters summary={summary} answers={form.answers} onAnswers={(answers) => change({ answers })} />
          )}
          {kind === "counter" && <CounterFields form={form} onChange={change} />}
          {kind === "approve" && <Understood form={form} onChange={change} />}
          {decide.error !== null && <DecisionProblem error={decide.error} comparison={seen.comparison} />}
          {kind !== undefined && (
            <Send
              kind={kind}
              ready={mayDecide(form, matters)}
              sending={decide.isPending}
              open={leftOpen(matters, form.answers)}
            />
          )}
        </form>
      </Panel>
    </div>
  );
};
