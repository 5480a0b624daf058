import { Button, Checkbox, Textarea } from "@mantine/core";
import type { OrderSeen } from "@evenhand/shared/http/orders";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useNavigate } from "@tanstack/react-router";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Car.module.css";
import { LinkButton } from "../../ui/LinkButton";

interface Props {
  readonly order: OrderSeen;
}

/** Before accepting, the inspector declares independence and every interest there is. */
export const AcceptOrder = ({ order }: Props) => {
  const t = useText();
  const queries = useQueryClient();
  const [independent, setIndependent] = useState(false);
  const [interests, setInterests] = useState("");
  const accept = useMutation({
    mutationFn: () =>
      call("orders.accept", {
        params: { id: order.id },
        ifMatch: order.revision,
        body: {
          independent: true,
          interests: interests
            .split("\n")
            .map((line) => line.trim())
            .filter((line) => line !== ""),
        },
      }),
    onSuccess: () => queries.invalidateQueries(),
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    accept.mutate();
  };
  return (
    <Panel title={t("accept.title")} hint={t("accept.hint")}>
      <form className={styles.form} onSubmit={submit}>
        {accept.error !== null && <ProblemNotice error={accept.error} />}
        <Notice kind="note" title={t("accept.blind")}>
          <p>{t("accept.blind.what")}</p>
        </Notice>
        <Textarea
          size="md"
          autosize
          minRows={2}
          label={t("accept.interests")}
          description={t("accept.interests.hint")}
          value={interests}
          onChange={(event) => setInterests(event.currentTarget.value)}
        />
        <Checkbox
          size="md"
          label={t("accept.independent", { dealer: order.dealer.name })}
          checked={independent}
          onChange={(event) => setIndependent(event.currentTarget.checked)}
        />
        <div>
          <Button type="submit" size="md" disabled={!independent} loading={accept.isPending}>
            {t("accept.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};

/** To the sheet: begun, gone on with, or followed by a new version. */
export const BeginInspection = ({ order }: Props) => {
  const t = useText();
  const queries = useQueryClient();
  const navigate = useNavigate();
  const open = async (id: string): Promise<void> => {
    await queries.invalidateQueries();
    await navigate({ to: "/reports/$report", params: { report: id } });
  };
  const begin = useMutation({
    mutationFn: () =>
      call("reports.inspect", {
        params: { id: order.id },
        body: {
          visit: {
            started: new Date().toISOString(),
            zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
          },
        },
      }),
    onSuccess: ({ id }) => open(id),
  });
  const revise = useMutation({
    mutationFn: () => call("reports.revise", { params: { id: order.report?.id ?? "" } }),
    onSuccess: ({ id }) => open(id),
  });
  const error = begin.error ?? revise.error;
  const { report } = order;
  if (order.state === "declined" || order.state === "cancelled") return null;
  return (
    <Panel
      title={t(
        report === null ? "inspect.title" : report.drafting ? "inspect.title.on" : "inspect.title.again",
      )}
    >
      {error !== null && <ProblemNotice error={error} />}
      <Notice kind="caution" title={t("inspect.caution")}>
        <p>{t("inspect.caution.what")}</p>
      </Notice>
      <div>
        {report === null && (
          <Button size="md" loading={begin.isPending} onClick={() => begin.mutate()}>
            {t("inspect.begin")}
          </Button>
        )}
        {report?.drafting === true && (
          <LinkButton size="md" to="/reports/$report" params={{ report: report.id }}>
            {t("inspect.on")}
          </LinkButton>
        )}
        {report?.drafting === false && (
          <Button variant="default" loading={revise.isPending} onClick={() => revise.mutate()}>
            {t("inspect.again")}
          </Button>
        )}
      </div>
    </Panel>
  );
};

/** The inspector declines, or the buyer cancels; either says why. */
export const EndOrder = ({ order, inspects }: Props & { readonly inspects: boolean }) => {
  const t = useText();
  const queries = useQueryClient();
  const [reason, setReason] = useState("");
  const end = useMutation({
    mutationFn: () =>
      call(inspects ? "orders.decline" : "orders.cancel", {
        params: { id: order.id },
        ifMatch: order.revision,
        body: { reason: reason.trim() },
      }),
    onSuccess: () => queries.invalidateQueries(),
  });
  const who = inspects ? "decline" : "cancel";
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    end.mutate();
  };
  return (
    <Panel title={t(`end.${who}.title`)}>
      <form className={styles.form} onSubmit={submit}>
        {end.error !== null && <ProblemNotice error={end.error} />}
        <Textarea
          size="md"
          autosize
          label={t("end.reason")}
          description={t("end.reason.hint")}
          value={reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <div>
          <Button type="submit" variant="default" disabled={reason.trim() === ""} loading={end.isPending}>
            {t(`end.${who}.do`)}
          </Button>
        </div>
      </form>
    </Panel>
  );
};
