import { FIRMNESSES } from "@evenhand/shared/terms";
import { Button, Checkbox, NativeSelect, Textarea } from "@mantine/core";
import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { QuestionSeen } from "@evenhand/shared/http/questions";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import type { Unread } from "../../offline/store";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { oneOf } from "../../service/one-of";
import { AnswerEditor } from "../../entities/answer/AnswerEditor";
import { documentQuery } from "../../entities/report/queries";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import styles from "./Questions.module.css";

const bases = [
  "seen",
  "measured",
  "felt",
  "documented",
  "told",
] as const satisfies readonly Finding["basis"][];

interface Props {
  readonly question: QuestionSeen;
  readonly car: VehicleDetail;
}

/** The revision of the finding that stands in the dealer's draft on this place, which the answer takes the place of. */
const useStanding = ({ question, car }: Props) => {
  const draft = car.drafts.find(({ kind }) => kind === "statement");
  const open = useQuery({
    queryKey: ["report", draft?.id, "findings"],
    enabled: draft !== undefined,
    queryFn: ({ signal }) => call("reports.get", { params: { id: draft?.id ?? "" }, signal }),
  });
  const standing = open.data?.findings.find(
    (one) => one.item === question.item && one.position === question.position,
  );
  return { ready: draft === undefined || open.data !== undefined, base: standing?.revision ?? null };
};

/** The dealer answers with a finding on the item, its firmness, and what it rests on. */
export const AnswerQuestion = ({ question, car }: Props) => {
  const t = useText();
  const queries = useQueryClient();
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  const scales = useQuery({
    ...documentQuery(car.statements[0]?.id ?? ""),
    enabled: car.statements.length > 0,
  }).data?.scales;
  const { ready, base } = useStanding({ question, car });
  const [answer, setAnswer] = useState<Answer | null>(null);
  const [unread, setUnread] = useState<Unread>();
  const [firmness, setFirmness] = useState<Finding["firmness"]>("asserted");
  const [basis, setBasis] = useState<Finding["basis"]>("seen");
  const [note, setNote] = useState("");
  const [seal, setSeal] = useState(true);
  const item = index?.items.get(question.item);
  const put = useMutation({
    mutationFn: () =>
      call("questions.answer", {
        params: { id: question.id },
        ifMatch: question.revision,
        body: {
          finding: {
            item: question.item,
            position: question.position,
            answer,
            firmness,
            basis,
            ...(note.trim() === "" ? {} : { note: note.trim() }),
          },
          base,
          seal,
        },
      }),
    onSuccess: () => queries.invalidateQueries(),
    onError: () => queries.invalidateQueries({ queryKey: ["report"] }),
  });
  if (!index || !item || !ready) return <Loading />;
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    put.mutate();
  };
  return (
    <Panel title={t("question.answer.title")} hint={t("question.answer.hint")}>
      <form className={styles.form} onSubmit={submit}>
        {put.error !== null && <ProblemNotice error={put.error} />}
        <fieldset className={styles.what}>
          <legend>{t("question.answer.what")}</legend>
          <AnswerEditor
            item={item}
            index={index}
            scales={scales ?? []}
            name={`answer-${question.id}`}
            answer={answer ?? undefined}
            notSeen={false}
            unread={unread}
            onChange={(next, left) => {
              setAnswer(next);
              setUnread(left);
            }}
          />
        </fieldset>
        <div className={styles.fields}>
          <NativeSelect
            size="md"
            label={t("question.answer.firmness")}
            value={firmness}
            data={FIRMNESSES.map((value) => ({ value, label: t(`firmness.${value}`) }))}
            onChange={({ currentTarget }) => setFirmness(oneOf(FIRMNESSES, currentTarget.value) ?? firmness)}
          />
          <NativeSelect
            size="md"
            label={t("question.answer.basis")}
            value={basis}
            data={bases.map((value) => ({ value, label: t(`basis.${value}`) }))}
            onChange={({ currentTarget }) => setBasis(oneOf(bases, currentTarget.value) ?? basis)}
          />
        </div>
        <Textarea
          size="md"
          autosize
          maxLength={4000}
          label={t("question.answer.note")}
          value={note}
          onChange={(event) => setNote(event.currentTarget.value)}
        />
        <Notice kind="note">
          <p>{t("question.answer.binds")}</p>
        </Notice>
        <Checkbox
          size="md"
          label={t("question.answer.seal")}
          description={t("question.answer.seal.hint")}
          checked={seal}
          onChange={(event) => setSeal(event.currentTarget.checked)}
        />
        <div>
          <Button
            type="submit"
            size="md"
            disabled={answer === null || unread !== undefined}
            loading={put.isPending}
          >
            {t("question.answer.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};
