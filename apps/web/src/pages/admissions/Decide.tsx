import { Button, Radio } from "@mantine/core";
import type { AdmissionSeen } from "@evenhand/shared/http/admissions";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { oneOf } from "../../service/one-of";
import { useText } from "../../strings/text";
import { LongTextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import styles from "./Admissions.module.css";
import { decisions, possibleDecisions, type Decision } from "./decisions";

interface ChoiceProps {
  readonly choices: readonly Decision[];
  readonly value: Decision | "";
  readonly onChange: (decision: Decision | "") => void;
}

const DecisionChoice = ({ choices, value, onChange }: ChoiceProps) => {
  const t = useText();
  return (
    <Radio.Group
      label={t("admissions.decision")}
      value={value}
      onChange={(said) => onChange(oneOf(decisions, said) ?? "")}
    >
      <div className={styles.buttons} style={{ gap: "1.2rem", paddingTop: "0.4rem" }}>
        {choices.map((choice) => (
          <Radio key={choice} size="md" value={choice} label={t(`admissions.decision.${choice}`)} />
        ))}
      </div>
    </Radio.Group>
  );
};

/** A decision and its reason, as they are being made; it is about the revision that was read. */
const useDeciding = ({ id, revision }: AdmissionSeen) => {
  const queries = useQueryClient();
  const [decision, setDecision] = useState<Decision | "">("");
  const [reason, setReason] = useState("");
  const decide = useMutation({
    mutationFn: (value: Decision) =>
      call("admissions.decide", {
        params: { id },
        ifMatch: revision,
        body: { decision: value, reason: reason.trim() },
      }),
    onSettled: () => queries.invalidateQueries({ queryKey: ["admissions"] }),
  });
  const submit = (): void => {
    if (decision !== "") decide.mutate(decision);
  };
  const isWhole = decision !== "" && reason.trim() !== "";
  return { decision, setDecision, reason, setReason, isWhole, decide, submit };
};

/** What the operator may decide on one application, and why. */
export const Decide = ({ admission }: { readonly admission: AdmissionSeen }) => {
  const t = useText();
  const { decision, setDecision, reason, setReason, isWhole, decide, submit } = useDeciding(admission);
  return (
    <details>
      <summary>{t("admissions.decide", { name: admission.name })}</summary>
      <div style={{ padding: "0.75rem 0" }}>
        <Form error={decide.error} onSubmit={submit}>
          <DecisionChoice
            choices={possibleDecisions(admission.state)}
            value={decision}
            onChange={setDecision}
          />
          <LongTextField
            maxLength={2000}
            label={t("admissions.reason")}
            description={t("admissions.reason.hint")}
            value={reason}
            onChange={setReason}
          />
          <div>
            <Button type="submit" disabled={!isWhole} loading={decide.isPending}>
              {t("admissions.do")}
            </Button>
          </div>
        </Form>
      </div>
    </details>
  );
};
