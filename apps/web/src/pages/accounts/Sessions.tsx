import { Button } from "@mantine/core";
import type { SessionSeen } from "@evenhand/shared/http/accounts";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";
import { useText } from "../../strings/text";
import { Line, List } from "../../ui/List";
import { Empty, Page, Panel, Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "../../features/accounts/Accounts.module.css";
import { useAccount } from "../../entities/account/queries";
import { useLeave } from "../../features/accounts/use-leave";

const sessionsQuery = pagedQuery(["sessions"], (after, signal) =>
  call("sessions.list", { query: { after }, signal }),
);

interface SessionProps {
  readonly session: SessionSeen;
  readonly onRevoke: () => void;
}

/** One device; the one in hand is ended by signing out, not here. */
const SessionLine = ({ session, onRevoke }: SessionProps) => {
  const t = useText();
  const intl = useIntl();
  const { device, lastSeenAt, createdAt, current } = session;
  const when = (instant: string): string =>
    intl.formatDate(instant, { dateStyle: "medium", timeStyle: "short" });
  const end = current ? (
    <Tag>{t("sessions.current")}</Tag>
  ) : (
    <Button variant="default" size="sm" aria-label={t("sessions.revoke.of", { device })} onClick={onRevoke}>
      {t("sessions.revoke")}
    </Button>
  );
  return (
    <Line
      main={device}
      sub={t("sessions.seen", { seen: when(lastSeenAt), created: when(createdAt) })}
      end={end}
    />
  );
};

const useEndAll = () => {
  const account = useAccount();
  const { leave, question } = useLeave(account?.id ?? "", false);
  const endAll = useMutation({ mutationFn: () => leave(() => call("sessions.endAll")) });
  return { endAll, question };
};

/** Every session at once, this one with them. */
const EndAll = ({ endAll, question }: ReturnType<typeof useEndAll>) => {
  const t = useText();
  return (
    <div className={styles.form}>
      <p className={styles.aside}>{t("sessions.end-all.what")}</p>
      <div>
        <Button size="md" variant="default" loading={endAll.isPending} onClick={() => endAll.mutate()}>
          {t("sessions.end-all")}
        </Button>
      </div>
      {question}
    </div>
  );
};

/** Where the person is signed in, and a way to end each. */
export const Sessions = () => {
  const t = useText();
  const queries = useQueryClient();
  const sessions = useInfiniteQuery(sessionsQuery);
  const revoke = useMutation({
    mutationFn: (id: string) => call("sessions.revoke", { params: { id } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["sessions"] }),
  });
  const ending = useEndAll();
  return (
    <Page title={t("sessions.title")} under={t("sessions.what")} narrow>
      {revoke.error !== null && <ProblemNotice error={revoke.error} />}
      {ending.endAll.error !== null && <ProblemNotice error={ending.endAll.error} />}
      <Panel>
        <List
          query={sessions}
          keyOf={({ id }) => id}
          empty={<Empty title={t("sessions.none")} />}
          renderRow={(session) => (
            <SessionLine session={session} onRevoke={() => revoke.mutate(session.id)} />
          )}
        />
        <EndAll {...ending} />
      </Panel>
    </Page>
  );
};
