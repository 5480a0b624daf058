import type { OperatorDesk as Desk, OperatorTask } from "@evenhand/shared/http/cases";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { HomePart } from "./HomePart";
import styles from "./Cases.module.css";
import { SpineLine, useMoment } from "./Waiting";

const Complaint = ({
  task: { id, state },
  since,
}: {
  readonly task: OperatorTask;
  readonly since: string;
}) => {
  const t = useText();
  return (
    <SpineLine
      whose="yours"
      time={since}
      title={t("desk.complaint")}
      press={
        <LinkButton to="/complaints/$complaint" params={{ complaint: id }}>
          {t("desk.complaint.do")}
        </LinkButton>
      }
    >
      <p>{t(`desk.complaint.${state ?? "received"}`)}</p>
    </SpineLine>
  );
};

const Admission = ({ task: { name }, since }: { readonly task: OperatorTask; readonly since: string }) => {
  const t = useText();
  return (
    <SpineLine
      whose="yours"
      time={since}
      title={name}
      press={<LinkButton to="/admissions">{t("desk.admission.do")}</LinkButton>}
    >
      <p>{t("desk.admission.what")}</p>
    </SpineLine>
  );
};

const Owed = ({ owed }: { readonly owed: Desk["owed"] }) => {
  const t = useText();
  const due = useMoment();
  return owed.map(({ state, count, until }) => (
    <SpineLine
      key={state}
      whose="others"
      time={until === null ? "" : t(isAhead(state) ? "case.at" : "case.by", { when: due(until) })}
      title={<Link to="/appointments">{t("desk.visits", { count })}</Link>}
    >
      <p>{isOwed(state) ? t(`desk.owed.${state}`) : t(`appointment.state.${state}`)}</p>
    </SpineLine>
  ));
};

const isAhead = (state: string): boolean => state === "confirmed" || state === "under-way";
const owedStates = ["held", "requested", "accepted", "confirmed", "under-way"] as const;
const isOwed = (state: string): state is (typeof owedStates)[number] =>
  owedStates.some((each) => each === state);

const Tasks = ({ tasks }: Pick<Desk, "tasks">) => {
  const t = useText();
  const intl = useIntl();
  const since = (at: string): string =>
    t("desk.since", { date: intl.formatDate(at, { month: "short", day: "numeric" }) });
  return tasks.map((task) =>
    task.kind === "answer-complaint" ? (
      <Complaint key={task.id} task={task} since={since(task.since)} />
    ) : (
      <Admission key={task.id} task={task} since={since(task.since)} />
    ),
  );
};

const Over = ({ rest }: Pick<Desk, "rest">) => {
  const t = useText();
  return rest.map(({ state, count }) => (
    <SpineLine key={state} whose="nobody" time="" title={t("desk.visits", { count })}>
      <p>{t(`appointment.state.${state}`)}</p>
    </SpineLine>
  ));
};

/** What waits for an operator, what the parties owe each other, and what is over: states and counts, never contents. */
export const OperatorDesk = ({ desk }: { readonly desk: Desk }) => {
  const t = useText();
  const left = desk.waiting - desk.tasks.length;
  return (
    <>
      <HomePart title={t("cases.yours")} count={desk.waiting} none={t("desk.yours.none")}>
        <Tasks tasks={desk.tasks} />
      </HomePart>
      {left > 0 && <p className={styles.none}>{t("desk.more", { left })}</p>}
      <HomePart title={t("cases.others")} count={desk.owed.length} none={t("cases.others.none")}>
        <Owed owed={desk.owed} />
      </HomePart>
      <HomePart title={t("desk.rest")} count={desk.rest.length} none={t("desk.rest.none")}>
        <Over rest={desk.rest} />
      </HomePart>
    </>
  );
};
