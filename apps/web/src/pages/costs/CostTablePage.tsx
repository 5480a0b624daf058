import { useQuery } from "@tanstack/react-query";
import { isKind, useAccount } from "../../entities/account/queries";
import { CostEditor } from "../../features/costs/CostEditor";
import { CostHistory } from "../../features/costs/CostHistory";
import { costTableQuery } from "../../entities/comparison/cost-table";
import { costedRowsQuery } from "../../features/costs/queries";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Empty, Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";

const OwnTable = ({ offered }: { readonly offered: boolean }) => {
  const [table, costed] = [useQuery(costTableQuery), useQuery(costedRowsQuery)];
  const error = table.error ?? costed.error;
  if (error !== null) return <ProblemNotice error={error} />;
  if (table.data === undefined || costed.data === undefined) return <Loading />;
  return (
    <>
      <CostEditor seen={table.data} costed={costed.data} offered={offered} />
      <CostHistory />
    </>
  );
};

/** What a buyer, or a firm that inspects, reckons that repairs cost. */
export const CostTablePage = () => {
  const t = useText();
  const account = useAccount();
  const [isBuyer, isFirm] = [isKind(account, "buyer"), isKind(account, "inspector")];
  return (
    <Page title={t("costs.title")} under={t(isBuyer ? "costs.under.buyer" : "costs.under.firm")}>
      {isBuyer || isFirm ? (
        <OwnTable offered={isBuyer} />
      ) : (
        <Empty title={t("costs.nobody")}>
          <p>{t("costs.nobody.what")}</p>
        </Empty>
      )}
    </Page>
  );
};
