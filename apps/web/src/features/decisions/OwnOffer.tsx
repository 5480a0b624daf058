import { Button } from "@mantine/core";
import type { Decision, OfferReply } from "@evenhand/shared/http/summaries";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { OfferFacts } from "./OfferFacts";
import styles from "./Summary.module.css";

type Reply = OfferReply["reply"];

interface Props {
  readonly decision: Decision;
  /** The dealer has countered back: their offer is taken or left; else the buyer's own may be withdrawn. */
  readonly back: boolean;
}

const replies = {
  back: [
    { reply: "accept", variant: "filled" },
    { reply: "refuse", variant: "default" },
  ],
  own: [{ reply: "withdraw", variant: "default" }],
} as const;

const useReply = ({ id, revision }: Decision) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (reply: Reply) =>
      call("decisions.reply", { params: { id }, ifMatch: revision, body: { reply } }),
    onSettled: () => queries.invalidateQueries(),
  });
};

/** A buyer's offer that is open: what lies on the table, until when, and what the buyer can do. */
export const OwnOffer = ({ decision, back }: Props) => {
  const t = useText();
  const offer = (back ? decision.answer?.offer : null) ?? decision;
  const send = useReply(decision);
  return (
    <div className={`${styles.form} ${styles.counter}`}>
      {back && <h2>{t("offer.by.dealer")}</h2>}
      <OfferFacts price={offer.price} conditions={offer.conditions} until={offer.until} />
      {back && <p className={styles.note}>{t("offer.plain")}</p>}
      {send.error !== null && <ProblemNotice error={send.error} />}
      <div className={styles.answers}>
        {replies[back ? "back" : "own"].map(({ reply, variant }) => (
          <Button
            key={reply}
            variant={variant}
            loading={send.isPending && send.variables === reply}
            onClick={() => send.mutate(reply)}
          >
            {t(`offer.${reply}`)}
          </Button>
        ))}
      </div>
    </div>
  );
};
