import { Button } from "@mantine/core";
import type { OpenInvitation } from "@evenhand/shared/http/accounts";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";
import { useText } from "../../strings/text";
import { Line, List } from "../../ui/List";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Accounts.module.css";

const openInvitationsQuery = (organization: string) =>
  pagedQuery(["open-invitations", organization], (after, signal) =>
    call("invitations.list", { params: { id: organization }, query: { after }, signal }),
  );

interface LineProps {
  readonly invitation: OpenInvitation;
  readonly onRevoke: () => void;
}

const InvitationLine = ({ invitation, onRevoke }: LineProps) => {
  const t = useText();
  const intl = useIntl();
  const { email, role, expiresAt } = invitation;
  const until = intl.formatDate(expiresAt, { dateStyle: "medium", timeStyle: "short" });
  return (
    <Line
      main={email}
      sub={t("invitations.open.until", { role: t(`role.${role}`), until })}
      end={
        <Button
          variant="default"
          size="sm"
          aria-label={t("invitations.revoke.of", { email })}
          onClick={onRevoke}
        >
          {t("invitations.revoke")}
        </Button>
      }
    />
  );
};

/** Invitations that still hold, and taking one back: its link leads nowhere from then on. */
export const OpenInvitations = ({ organization }: { readonly organization: string }) => {
  const t = useText();
  const queries = useQueryClient();
  const invitations = useInfiniteQuery(openInvitationsQuery(organization));
  const revoke = useMutation({
    mutationFn: (id: string) => call("invitations.revoke", { params: { id } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["open-invitations", organization] }),
  });
  return (
    <div>
      <h3>{t("invitations.open")}</h3>
      {revoke.error !== null && <ProblemNotice error={revoke.error} />}
      <List
        query={invitations}
        keyOf={({ id }) => id}
        empty={<p className={styles.aside}>{t("invitations.open.none")}</p>}
        renderRow={(invitation) => (
          <InvitationLine invitation={invitation} onRevoke={() => revoke.mutate(invitation.id)} />
        )}
      />
    </div>
  );
};
