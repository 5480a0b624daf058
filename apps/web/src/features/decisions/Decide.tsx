import { Button, Textarea, TextInput } from "@mantine/core";
import type { SummarySeen } from "@evenhand/shared/http/summaries";
import type { Summary } from "@evenhand/shared/summary";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useCurrency } from "../../entities/car/use-currency";
import { Choices } from "../../entities/answer/Choices";
import { DecisionProblem } from "./DecisionProblem";
import {
  decideAfter,
  decisionKinds,
  decisionOf,
  formOf,
  mayDecide,
  type DecideForm,
  type DecisionKind,
} from "./decide-form";
import { openOf } from "./matter-answers";
import styles from "./Summary.module.css";
import { UntilField } from "./UntilField";
import { useKeptDraft } from "./use-kept-draft";
import { Walk } from "./Walk";

interface Props {
  readonly summary: Summary;
  readonly seen: SummarySeen;
  readonly onDecided: () => void;
}

interface PartProps {
  readonly form: DecideForm;
  readonly onChange: (change: Partial<DecideForm>) => void;
}

const useDecide = ({ summary, seen, onDecided }: Props, form: DecideForm, currency: string | undefined) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (decision: DecisionKind) =>
      call("summaries.decide", {
        params: { id: seen.id },
        body: decisionOf(decision, form, { matters: summary.openMatters, hash: seen.hash, currency }),
      }),
    onSuccess: onDecided,
    onSettled: () => queries.invalidateQueries(),
  });
};

const CounterFields = ({
  form,
  currency,
  onChange,
}: PartProps & { readonly currency: string | undefined }) => {
  const t = useText();
  return (
    <div className={styles.row}>
      <TextInput
        size="md"
        inputMode="decimal"
        label={t("decide.price")}
        rightSection={currency}
        rightSectionWidth={56}
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
      <UntilField value={form.until} onChange={(until) => onChange({ until })} />
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
    <div className={styles.send}>
      {kind === "approve" && <p>{t("decide.understood")}</p>}
      <Button type="submit" size="md" disabled={!ready} loading={sending}>
        {t(`decide.${kind}.do`)}
      </Button>
      {kind === "approve" && open > 0 && (
        <output className={styles.note}>{t("decide.matters.left", { count: open })}</output>
      )}
    </div>
  );
};

/** Said from what the service answered, never before; its room is there before, or the page would jump under what has the focus. */
const Kept = ({ draft }: { readonly draft: ReturnType<typeof useKeptDraft> }) => {
  const t = useText();
  if (draft.error !== null) return <ProblemNotice error={draft.error} />;
  const visibility = draft.isKept ? "visible" : "hidden";
  return (
    <output className={styles.note} style={{ visibility }}>
      {t("decide.kept")}
    </output>
  );
};

/** What is chosen and typed, kept as it goes. */
const useForm = ({ seen }: Props) => {
  const draft = useKeptDraft(seen.id, seen.draft);
  const [form, setForm] = useState(() => formOf(seen.draft.draft));
  const change = (changed: Partial<DecideForm>): void => {
    const next = decideAfter(form, changed);
    setForm(next);
    draft.keep(next);
  };
  return { form, change, draft };
};

/** Approve, counter or decline exactly what is on this page. */
export const Decide = (props: Props) => {
  const t = useText();
  const { summary, seen } = props;
  const matters = summary.openMatters;
  const { form, change, draft } = useForm(props);
  const { kind } = form;
  const currency = useCurrency(summary.vehicle.id);
  const decide = useDecide(props, form, currency);
  const ready = mayDecide(form, { matters, currency });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    if (kind !== undefined && ready) decide.mutate(kind);
  };
  const open = openOf(matters, form.answers).length;
  return (
    <Panel title={t("decide.title")} hint={t("decide.hint")}>
      <form className={`${styles.form} no-print`} onSubmit={submit}>
        <KindChoice form={form} onChange={change} />
        {kind === "approve" && matters.length > 0 && (
          <Walk
            comparison={summary.comparison.id}
            matters={matters}
            answers={form.answers}
            onAnswers={(answers) => change({ answers })}
          />
        )}
        {kind === "counter" && <CounterFields form={form} currency={currency} onChange={change} />}
        {decide.error !== null && <DecisionProblem error={decide.error} comparison={seen.comparison} />}
        {kind !== undefined && <Send kind={kind} ready={ready} sending={decide.isPending} open={open} />}
        <Kept draft={draft} />
      </form>
    </Panel>
  );
};
