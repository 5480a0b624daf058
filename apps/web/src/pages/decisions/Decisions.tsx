import type { Decision } from "@evenhand/shared/http/summaries";
import { useInfiniteQuery } from "@tanstack/react-query";
import { useText } from "../../strings/text";
import { List } from "../../ui/List";
import { Empty, Page, Panel } from "../../ui/Page";
import { isKind, useAccount } from "../../entities/account/queries";
import { AnswerCounter } from "../../features/decisions/AnswerCounter";
import { DecisionLine } from "../../features/decisions/DecisionLine";
import { OwnOffer } from "../../features/decisions/OwnOffer";
import { stateOf } from "../../features/decisions/state-of";
import { decisionsQuery } from "../../features/decisions/queries";

const NoDecisions = ({ deals }: { readonly deals: boolean }) => {
  const t = useText();
  return (
    <Empty title={t(deals ? "decisions.none.dealer" : "decisions.none.buyer")}>
      {t(deals ? "decisions.none.dealer.hint" : "decisions.none.buyer.hint")}
    </Empty>
  );
};

/** A decision, and what can be done about its offer while it is open. */
const DecisionRow = ({ decision, deals }: { readonly decision: Decision; readonly deals: boolean }) => {
  const state = stateOf(decision);
  const asks = deals && state === "countered";
  const offers = !deals && (state === "countered" || state === "countered-back");
  return (
    <>
      <DecisionLine decision={decision} priceBelow={state === "countered" && (asks || offers)} />
      {asks && <AnswerCounter decision={decision} />}
      {offers && <OwnOffer decision={decision} back={state === "countered-back"} />}
    </>
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
          renderRow={(decision) => <DecisionRow decision={decision} deals={deals} />}
          empty={<NoDecisions deals={deals} />}
        />
      </Panel>
    </Page>
  );
};
