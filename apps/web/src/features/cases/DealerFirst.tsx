import type { CaseSeen } from "@evenhand/shared/http/cases";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { TickField } from "../../ui/Fields";
import { ProblemNotice } from "../../ui/ProblemNotice";
import pages from "./Cases.module.css";

/** The buyer's choice whether the dealer may answer before the buyer reads. */
export const DealerFirst = ({ row: { id, dealerFirst } }: { readonly row: CaseSeen }) => {
  const t = useText();
  const queries = useQueryClient();
  const choose = useMutation({
    mutationFn: (allowed: boolean) => call("cases.letDealerFirst", { params: { id }, body: { allowed } }),
    onSettled: () => queries.invalidateQueries({ queryKey: ["case", id] }),
  });
  if (dealerFirst === null) return null;
  return (
    <section className={pages.part}>
      {choose.error !== null && <ProblemNotice error={choose.error} />}
      <TickField
        label={t("case.dealer-first")}
        description={t("case.dealer-first.hint")}
        checked={choose.isPending ? choose.variables : dealerFirst}
        disabled={choose.isPending}
        onChange={(allowed) => choose.mutate(allowed)}
      />
    </section>
  );
};
