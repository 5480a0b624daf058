import { Button, Checkbox, Textarea } from "@mantine/core";
import type { OrderSeen } from "@evenhand/shared/http/orders";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent, type ReactNode } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useOpenReport, useRevise, visitNow } from "./begin-report";
import styles from "./Car.module.css";
import { LinkButton } from "../../ui/LinkButton";

interface Props {
  readonly order: OrderSeen;
}

/** What was typed of interests, one a line, as the service takes them. */
const interestsOf = (typed: string): string[] =>
  typed
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");

const useAccept = (order: OrderSeen) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (interests: string) =>
      call("orders.accept", {
        params: { id: order.id },
        ifMatch: order.revision,
        body: { independent: true, interests: interestsOf(interests) },
      }),
    onSuccess: () => queries.invalidateQueries(),
  });
};

interface Declared {
  readonly independent: boolean;
  readonly interests: string;
}
interface DeclaredProps extends Props {
  readonly declared: Declared;
  readonly onChange: (declared: Declared) => void;
}

const DeclaredFields = ({ order, declared, onChange }: DeclaredProps) => {
  const t = useText();
  return (
    <>
      <Textarea
        size="md"
        autosize
        minRows={2}
        label={t("accept.interests")}
        description={t("accept.interests.hint")}
        value={declared.interests}
        onChange={(event) => onChange({ ...declared, interests: event.currentTarget.value })}
      />
      <Checkbox
        size="md"
        label={t("accept.independent", { dealer: order.dealer.name })}
        checked={declared.independent}
        onChange={(event) => onChange({ ...declared, independent: event.currentTarget.checked })}
      />
    </>
  );
};

/** Before accepting, the inspector declares independence and every interest there is. */
export const AcceptOrder = ({ order }: Props) => {
  const t = useText();
  const [declared, setDeclared] = useState<Declared>({ independent: false, interests: "" });
  const accept = useAccept(order);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    accept.mutate(declared.interests);
  };
  return (
    <Panel title={t("accept.title")} hint={t("accept.hint")}>
      <form className={styles.form} onSubmit={submit}>
        {accept.error !== null && <ProblemNotice error={accept.error} />}
        <Notice kind="note" title={t("accept.blind")}>
          <p>{t("accept.blind.what")}</p>
        </Notice>
        <DeclaredFields order={order} declared={declared} onChange={setDeclared} />
        <div>
          <Button type="submit" size="md" disabled={!declared.independent} loading={accept.isPending}>
            {t("accept.do")}
          </Button>
        </div>
      </form>
    </Panel>
  );
};

type Inspected = NonNullable<OrderSeen["report"]>;

/** Every way to the sheet stands under the same caution. */
const InspectPanel = ({
  title,
  error,
  children,
}: {
  readonly title: string;
  readonly error: Error | null;
  readonly children: ReactNode;
}) => {
  const t = useText();
  return (
    <Panel title={title}>
      {error !== null && <ProblemNotice error={error} />}
      <Notice kind="caution" title={t("inspect.caution")}>
        <p>{t("inspect.caution.what")}</p>
      </Notice>
      <div>{children}</div>
    </Panel>
  );
};

const useBegin = (order: OrderSeen) => {
  const open = useOpenReport();
  const queries = useQueryClient();
  return useMutation({
    mutationFn: () => call("reports.inspect", { params: { id: order.id }, body: { visit: visitNow() } }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries();
      await open(id);
    },
  });
};

const BeginSheet = ({ order }: Props) => {
  const t = useText();
  const begin = useBegin(order);
  return (
    <InspectPanel title={t("inspect.title")} error={begin.error}>
      <Button size="md" loading={begin.isPending} onClick={() => begin.mutate()}>
        {t("inspect.begin")}
      </Button>
    </InspectPanel>
  );
};

const ContinueSheet = ({ report }: { readonly report: Inspected }) => {
  const t = useText();
  return (
    <InspectPanel title={t("inspect.title.on")} error={null}>
      <LinkButton size="md" to="/reports/$report" params={{ report: report.id }}>
        {t("inspect.on")}
      </LinkButton>
    </InspectPanel>
  );
};

const ReviseSheet = ({ report }: { readonly report: Inspected }) => {
  const t = useText();
  const revise = useRevise(report.id);
  return (
    <InspectPanel title={t("inspect.title.again")} error={revise.error}>
      <Button variant="default" loading={revise.isPending} onClick={() => revise.mutate()}>
        {t("inspect.again")}
      </Button>
    </InspectPanel>
  );
};

/** To the sheet: begun, gone on with, or followed by a new version. */
export const BeginInspection = ({ order }: Props) => {
  const { report, state } = order;
  if (state === "declined" || state === "cancelled") return null;
  if (report === null) return <BeginSheet order={order} />;
  return report.drafting ? <ContinueSheet report={report} /> : <ReviseSheet report={report} />;
};

const useEnd = ({ id, revision }: OrderSeen, inspects: boolean) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (reason: string) =>
      call(inspects ? "orders.decline" : "orders.cancel", {
        params: { id },
        ifMatch: revision,
        body: { reason: reason.trim() },
      }),
    onSuccess: () => queries.invalidateQueries(),
  });
};

const Reason = ({
  reason,
  onReason,
}: {
  readonly reason: string;
  readonly onReason: (reason: string) => void;
}) => {
  const t = useText();
  return (
    <Textarea
      size="md"
      autosize
      label={t("end.reason")}
      description={t("end.reason.hint")}
      value={reason}
      onChange={(event) => onReason(event.currentTarget.value)}
    />
  );
};

/** The inspector declines, or the buyer cancels; either says why. */
export const EndOrder = ({ order, inspects }: Props & { readonly inspects: boolean }) => {
  const t = useText();
  const [reason, setReason] = useState("");
  const end = useEnd(order, inspects);
  const who = inspects ? "decline" : "cancel";
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    end.mutate(reason);
  };
  return (
    <Panel title={t(`end.${who}.title`)}>
      <form className={styles.form} onSubmit={submit}>
        {end.error !== null && <ProblemNotice error={end.error} />}
        <Reason reason={reason} onReason={setReason} />
        <div>
          <Button type="submit" variant="default" disabled={reason.trim() === ""} loading={end.isPending}>
            {t(`end.${who}.do`)}
          </Button>
        </div>
      </form>
    </Panel>
  );
};
