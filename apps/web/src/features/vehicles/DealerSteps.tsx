import { Button } from "@mantine/core";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { versionQuery } from "../../entities/report/queries";
import { useOpenReport, useRevise, visitNow } from "./begin-report";
import { Step } from "./Step";
import { LinkButton } from "../../ui/LinkButton";

interface Props {
  readonly car: VehicleDetail;
}

const useStart = (car: VehicleDetail) => {
  const open = useOpenReport();
  const queries = useQueryClient();
  return useMutation({
    mutationFn: () =>
      call("reports.state", { params: { id: car.id }, body: { kind: "statement", visit: visitNow() } }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: ["vehicle", car.id] });
      await open(id);
    },
  });
};

const BeginStatement = ({ car }: Props) => {
  const t = useText();
  const start = useStart(car);
  return (
    <Step title={t("next.state")}>
      <p>{t("next.state.what")}</p>
      {start.error !== null && <ProblemNotice error={start.error} />}
      <Button loading={start.isPending} onClick={() => start.mutate()}>
        {t("next.state.do")}
      </Button>
    </Step>
  );
};

const ContinueStatement = ({ draft }: { readonly draft: string }) => {
  const t = useText();
  return (
    <Step title={t("next.state.on")}>
      <LinkButton to="/reports/$report" params={{ report: draft }}>
        {t("next.state.on.do")}
      </LinkButton>
    </Step>
  );
};

const ReviseStatement = ({ newest }: { readonly newest: string }) => {
  const t = useText();
  const version = useQuery(versionQuery(newest));
  const revise = useRevise(version.data?.report);
  return (
    <Step title={t("next.revise")}>
      <p>{t("next.revise.what")}</p>
      {revise.error !== null && <ProblemNotice error={revise.error} />}
      <Button
        variant="default"
        loading={revise.isPending}
        disabled={!version.data}
        onClick={() => revise.mutate()}
      >
        {t("next.revise.do")}
      </Button>
    </Step>
  );
};

/** Begin the statement, go on with it, or make a new version of it. */
export const StatementStep = ({ car }: Props) => {
  const draft = car.drafts.find(({ kind }) => kind === "statement");
  const [newest] = car.statements;
  if (draft) return <ContinueStatement draft={draft.id} />;
  return newest ? <ReviseStatement newest={newest.id} /> : <BeginStatement car={car} />;
};

/** List the car once it is stated, or withdraw it. */
export const ListingStep = ({ car }: Props) => {
  const t = useText();
  const queries = useQueryClient();
  const list = useMutation({
    mutationFn: (listed: boolean) =>
      call("vehicles.change", { params: { id: car.id }, ifMatch: car.revision, body: { listed } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["vehicle", car.id] }),
  });
  if (car.statements.length === 0) return null;
  return (
    <Step title={t(car.listed ? "next.listed" : "next.list")}>
      <p>{t(car.listed ? "next.listed.what" : "next.list.what")}</p>
      {list.error !== null && <ProblemNotice error={list.error} />}
      <Button
        variant={car.listed ? "default" : "filled"}
        loading={list.isPending}
        onClick={() => list.mutate(!car.listed)}
      >
        {t(car.listed ? "next.listed.do" : "next.list.do")}
      </Button>
    </Step>
  );
};
