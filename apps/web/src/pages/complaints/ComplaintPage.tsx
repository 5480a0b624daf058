import { Button, Textarea } from "@mantine/core";
import type { ComplaintSeen } from "@evenhand/shared/http/complaints";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState, type FormEvent, type ReactNode } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Facts, Page, Panel, Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { isKind, useAccount } from "../../entities/account/queries";
import styles from "../../features/complaints/Complaints.module.css";
import { complaintQuery } from "../../features/complaints/queries";

const route = getRouteApi("/signed-in/complaints/$complaint");

interface Props {
  readonly complaint: ComplaintSeen;
}

/** Where what the complaint is about can be looked at. */
const About = ({ complaint: { about } }: Props) => {
  const t = useText();
  if (about === null) return t("complaint.closed");
  const words = t(`complaint.about.${about.kind}`);
  if (about.id !== null && about.kind === "appointment") {
    return (
      <Link to="/appointments/$appointment" params={{ appointment: about.id }}>
        {words}
      </Link>
    );
  }
  if (about.id !== null && about.kind === "vehicle") {
    return (
      <Link to="/cars/$vehicle" params={{ vehicle: about.id }}>
        {words}
      </Link>
    );
  }
  return words;
};

interface WritingProps {
  readonly title: string;
  readonly hint?: string;
  readonly label: string;
  readonly description?: string;
  readonly least: number;
  readonly action: string;
  readonly pending: boolean;
  readonly error: unknown;
  readonly onSend: (text: string) => void;
}

const Writing = (props: WritingProps): ReactNode => {
  const [text, setText] = useState("");
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    props.onSend(text.trim());
  };
  return (
    <Panel title={props.title} hint={props.hint}>
      <form className={styles.form} onSubmit={submit}>
        {props.error !== null && <ProblemNotice error={props.error} />}
        <Textarea
          size="md"
          autosize
          minRows={2}
          label={props.label}
          description={props.description}
          value={text}
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <div>
          <Button type="submit" disabled={text.trim().length < props.least} loading={props.pending}>
            {props.action}
          </Button>
        </div>
      </form>
    </Panel>
  );
};

/** The operator opens it for a reason that is logged, and answers. */
const OperatorMoves = ({ complaint }: Props) => {
  const t = useText();
  const queries = useQueryClient();
  const read = (): Promise<void> => queries.invalidateQueries();
  const open = useMutation({
    mutationFn: (reason: string) =>
      call("complaints.open", { params: { id: complaint.id }, body: { reason } }),
    onSuccess: read,
  });
  const answer = useMutation({
    mutationFn: (text: string) =>
      call("complaints.answer", {
        params: { id: complaint.id },
        ifMatch: complaint.revision,
        body: { text },
      }),
    onSuccess: read,
  });
  return (
    <>
      {complaint.text === null && (
        <Writing
          title={t("complaint.open.title")}
          hint={t("complaint.open.what")}
          label={t("complaint.open.reason")}
          description={t("complaint.open.reason.hint")}
          least={10}
          action={t("complaint.open.do")}
          pending={open.isPending}
          error={open.error}
          onSend={(reason) => open.mutate(reason)}
        />
      )}
      {complaint.text !== null && complaint.state !== "answered" && (
        <Writing
          title={t("complaint.answer.title")}
          label={t("complaint.answer.text")}
          least={1}
          action={t("complaint.answer.do")}
          pending={answer.isPending}
          error={answer.error}
          onSend={(text) => answer.mutate(text)}
        />
      )}
    </>
  );
};

const Openings = ({ complaint: { openings } }: Props) => {
  const t = useText();
  const intl = useIntl();
  return (
    <Panel title={t("complaint.openings")}>
      {openings.length === 0 ? (
        <p>{t("complaint.openings.none")}</p>
      ) : (
        <ul>
          {openings.map(({ at, by, reason }) => (
            <li key={at}>
              {t("complaint.opening", {
                by,
                reason,
                when: intl.formatDate(at, { dateStyle: "medium", timeStyle: "short" }),
              })}
            </li>
          ))}
        </ul>
      )}
    </Panel>
  );
};

/** One complaint: to whoever sent it everything; to the operator its contents only once opened. */
export const ComplaintPage = () => {
  const t = useText();
  const intl = useIntl();
  const operates = isKind(useAccount(), "operator");
  const { complaint: id } = route.useParams();
  const { data: complaint, error } = useQuery(complaintQuery(id));
  if (error) {
    return (
      <Page title={t("complaint.title")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!complaint) return <Loading />;
  return (
    <Page
      title={t("complaint.title")}
      over={<Link to="/complaints">{t("nav.complaints")}</Link>}
      actions={<Tag>{t(`complaints.state.${complaint.state}`)}</Tag>}
      narrow
    >
      <Panel title={t("complaint.text")}>
        <Facts
          rows={[
            [t("complaint.from"), complaint.from?.name ?? t("complaint.closed")],
            [t("complaint.about"), <About key="about" complaint={complaint} />],
            [
              t("complaint.received"),
              intl.formatDate(complaint.receivedAt, { dateStyle: "long", timeStyle: "short" }),
            ],
          ]}
        />
        {complaint.text !== null && <p className={styles.said}>{complaint.text}</p>}
      </Panel>
      {operates && <OperatorMoves complaint={complaint} />}
      <Panel title={t("complaint.reply")}>
        <p className={styles.said}>{complaint.reply ?? t("complaint.reply.none")}</p>
      </Panel>
      <Openings complaint={complaint} />
    </Page>
  );
};
