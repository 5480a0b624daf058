import { Button } from "@mantine/core";
import type { Release } from "@evenhand/shared/http/releases";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { LongTextField } from "../../ui/Fields";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Disputes.module.css";

const answers = [
  { given: "accept", variant: "filled" },
  { given: "contest", variant: "default" },
] as const;

interface Props {
  readonly release: Release;
}

/** The dealer's answer to what was laid before them, with its reason. */
const useAnswer = ({ release }: Props) => {
  const queries = useQueryClient();
  const [reason, setReason] = useState("");
  const answer = useMutation({
    mutationFn: (given: (typeof answers)[number]["given"]) =>
      call("releases.answer", {
        params: { id: release.id },
        ifMatch: release.revision,
        body: { answer: given, reason: reason.trim() },
      }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["releases"] }),
  });
  return { reason, setReason, answer };
};

/** The dealer accepts or contests it; neither without a reason. */
export const AnswerRelease = ({ release }: Props) => {
  const t = useText();
  const { reason, setReason, answer } = useAnswer({ release });
  return (
    <div className={styles.form}>
      {answer.error !== null && <ProblemNotice error={answer.error} />}
      <LongTextField
        minRows={2}
        label={t("answer.reason")}
        description={t("answer.reason.hint")}
        value={reason}
        onChange={setReason}
      />
      <div className={styles.buttons}>
        {answers.map(({ given, variant }) => (
          <Button
            key={given}
            variant={variant}
            disabled={reason.trim() === ""}
            loading={answer.isPending && answer.variables === given}
            onClick={() => answer.mutate(given)}
          >
            {t(`answer.${given}`)}
          </Button>
        ))}
      </div>
    </div>
  );
};
