import { Button, Textarea } from "@mantine/core";
import type { Decision } from "@evenhand/shared/http/summaries";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { List } from "../../ui/List";
import { moneyText } from "../../ui/money";
import { Empty, Facts, Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { isKind, useAccount } from "../../entities/account/queries";
import { DecisionLine } from "../../features/decisions/DecisionLine";
import { decisionsQuery } from "../../features/decisions/queries";
import styles from "../../features/decisions/Summary.module.css";

/** A counter waits for the dealer: a price, conditions, or both. */
const AnswerCounter = ({ decision }: { readonly decision: Decision }) => {
  const t = useText();
  const intl = useIntl();
  const queries = useQueryClient();
  const [note, setNote] = useState("");
  const answer = useMutation({
    mutationFn: (given: "accept" | "refuse") =>
      call("decisions.answer", {
        params: { id: decision.id },
        ifMatch: decision.revision,
        body: { answer: given, ...(note.trim() === "" ? {} : { note: note.trim() }) },
      }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["decisions"] }),
  });
  return (
    <div className={styles.form} id={`decision-${decision.id}`}>
      <Facts
        rows={[
          [
            t("decide.price"),
            decision.price === null ? t("counter.no-price") : moneyText(intl, decision.price),
          ],
          [t("decide.conditions"), decision.conditions ?? t("counter.no-conditions")],
        ]}
      />
      {answer.error !== null && <ProblemNotice error={answer.error} />}
      <Textarea
        size="md"
        autosize
        label={t("counter.note")}
        value={note}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
      <div style={{ display: "flex", gap: "0.5rem", flexWrap: "wrap" }}>
        <Button
          loading={answer.isPending && answer.variables === "accept"}
          onClick={() => answer.mutate("accept")}
        >
          {t("counter.accept")}
        </Button>
        <Button
          variant="default"
          loading={answer.isPending && answer.variables === "refuse"}
          onClick={() => answer.mutate("refuse")}
        >
          {t("counter.refuse")}
        </Button>
      </div>
    </div>
  );
};

export const Decisions = () => {
  const t = useText();
  const deals = isKind(useAccount(), "dealer");
  const decisions = useInfiniteQuery(decisionsQuery);
  return (
    <Page
      title={t("nav.decisions")}
      under={t(deals ? "decisions.what.dealer" : "decisions.what.buyer")}
      narrow
    >
      <Panel>
        <List
          query={decisions}
          keyOf={({ id }) => id}
          renderRow={(decision) => (
            <>
              <DecisionLine decision={decision} />
              {deals && decision.decision === "counter" && decision.answer === null && (
                <AnswerCounter decision={decision} />
              )}
            </>
          )}
          empty={
            <Empty title={t(deals ? "decisions.none.dealer" : "decisions.none.buyer")}>
              {t(deals ? "decisions.none.dealer.hint" : "decisions.none.buyer.hint")}
            </Empty>
          }
        />
      </Panel>
    </Page>
  );
};
