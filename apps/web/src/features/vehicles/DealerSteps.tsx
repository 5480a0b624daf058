import { Button } from "@mantine/core";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useNavigate } from "@tanstack/react-router";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { versionQuery } from "../../entities/report/queries";
import { Step } from "./Step";
import { LinkButton } from "../../ui/LinkButton";

interface Props {
  readonly car: VehicleDetail;
}

const useStart = (car: VehicleDetail) => {
  const navigate = useNavigate();
  const queries = useQueryClient();
  return useMutation({
    mutationFn: () =>
      call("reports.state", {
        params: { id: car.id },
        body: {
          kind: "statement",
          visit: {
            started: new Date().toISOString(),
            zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
          },
        },
      }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: ["vehicle", car.id] });
      await navigate({ to: "/reports/$report", params: { report: id } });
    },
  });
};

const useRevise = (report: string | undefined) => {
  const navigate = useNavigate();
  const queries = useQueryClient();
  return useMutation({
    mutationFn: () => call("reports.revise", { params: { id: report ?? "" } }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries();
      await navigate({ to: "/reports/$report", params: { report: id } });
    },
  });
};

/** Begin the statement, go on with it, or make a new version of it. */
export const StatementStep = ({ car }: Props) => {
  const t = useText();
  const draft = car.drafts.find(({ kind }) => kind === "statement");
  const [newest] = car.statements;
  const version = useQuery({
    ...versionQuery(newest?.id ?? ""),
    enabled: newest !== undefined && draft === undefined,
  });
  const start = useStart(car);
  const revise = useRevise(version.data?.report);
  const error = start.error ?? revise.error;
  if (draft) {
    return (
      <Step title={t("next.state.on")}>
        <LinkButton to="/reports/$report" params={{ report: draft.id }}>
          {t("next.state.on.do")}
        </LinkButton>
      </Step>
    );
  }
  return (
    <Step title={t(newest ? "next.revise" : "next.state")}>
      <p>{t(newest ? "next.revise.what" : "next.state.what")}</p>
      {error !== null && <ProblemNotice error={error} />}
      {newest ? (
        <Button
          variant="default"
          loading={revise.isPending}
          disabled={!version.data}
          onClick={() => revise.mutate()}
        >
          {t("next.revise.do")}
        </Button>
      ) : (
        <Button loading={start.isPending} onClick={() => start.mutate()}>
          {t("next.state.do")}
        </Button>
      )}
    </Step>
  );
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
