import { FIRMNESSES } from "@evenhand/shared/terms";
import { Button } from "@mantine/core";
import type { ReactNode } from "react";
import { useText } from "../../strings/text";
import { LongTextField, TermField, TickField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { AnswerEditor } from "../../entities/answer/AnswerEditor";
import { bases, mayBeGiven, type AnswerForm } from "./answer-form";
import styles from "./Questions.module.css";
import { useAnswering, useAskedItem, type Asked } from "./use-answering";

interface PartProps {
  readonly form: AnswerForm;
  readonly change: (part: Partial<AnswerForm>) => void;
}

/** What the dealer finds on the item, in the editor of its kind. */
const WhatIsFound = ({ question, car, form, change }: Asked & PartProps) => {
  const t = useText();
  const { index, item, scales } = useAskedItem({ question, car });
  if (!index || !item) return null;
  return (
    <fieldset className={styles.what}>
      <legend>{t("question.answer.what")}</legend>
      <AnswerEditor
        item={item}
        index={index}
        scales={scales}
        name={`answer-${question.id}`}
        answer={form.answer ?? undefined}
        notSeen={false}
        unread={form.unread}
        onChange={(answer, unread) => change({ answer, unread })}
      />
    </fieldset>
  );
};

/** How firmly it is said, and what it rests on. */
const Grounds = ({ form, change }: PartProps) => {
  const t = useText();
  return (
    <div className={styles.fields}>
      <TermField
        label={t("question.answer.firmness")}
        value={form.firmness}
        terms={FIRMNESSES}
        wordFor={(firmness) => t(`firmness.${firmness}`)}
        onChange={(firmness) => change({ firmness })}
      />
      <TermField
        label={t("question.answer.basis")}
        value={form.basis}
        terms={bases}
        wordFor={(basis) => t(`basis.${basis}`)}
        onChange={(basis) => change({ basis })}
      />
    </div>
  );
};

/** What giving the answer means, and whether it is published at once. */
const Sealing = ({ form, change }: PartProps) => {
  const t = useText();
  return (
    <>
      <Notice kind="note">
        <p>{t("question.answer.binds")}</p>
      </Notice>
      <TickField
        label={t("question.answer.seal")}
        description={t("question.answer.seal.hint")}
        checked={form.seal}
        onChange={(seal) => change({ seal })}
      />
    </>
  );
};

/** The dealer answers with a finding on the item, its firmness, and what it rests on. */
export const AnswerQuestion = (asked: Asked): ReactNode => {
  const t = useText();
  const { index, item } = useAskedItem(asked);
  const { ready, form, change, put } = useAnswering(asked);
  if (!index || !item || !ready) return <Loading />;
  return (
    <Panel title={t("question.answer.title")} hint={t("question.answer.hint")}>
      <Form error={put.error} onSubmit={() => put.mutate()}>
        <WhatIsFound {...asked} form={form} change={change} />
        <Grounds form={form} change={change} />
        <LongTextField
          maxLength={4000}
          label={t("question.answer.note")}
          value={form.note}
          onChange={(note) => change({ note })}
        />
        <Sealing form={form} change={change} />
        <div>
          <Button type="submit" size="md" disabled={!mayBeGiven(form)} loading={put.isPending}>
            {t("question.answer.do")}
          </Button>
        </div>
      </Form>
    </Panel>
  );
};
