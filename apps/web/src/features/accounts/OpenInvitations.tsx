import { Button } from "@mantine/core";
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

/** Invitations that still hold, and taking one back: its link leads nowhere from then on. */
export const OpenInvitations = ({ organization }: { readonly organization: string }) => {
  const t = useText();
  const intl = useIntl();
  const queries = useQueryClient();
  const invitations = useInfiniteQuery(openInvitationsQuery(organization));
  const revoke = useMutation({
    mutationFn: (id: string) => call("invitations.revoke", { params: { id } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["open-invitations", organization] }),
  });
  const when = (instant: string): string =>
    intl.formatDate(instant, { dateStyle: "medium", timeStyle: "short" });
  return (
    <div>
      <h3>{t("invitations.open")}</h3>
      {revoke.error !== null && <ProblemNotice error={revoke.error} />}
      <List
        query={invitations}
        keyOf={({ id }) => id}
        empty={<p className={styles.aside}>{t("invitations.open.none")}</p>}
        renderRow={({ id, email, role, expiresAt }) => (
          <Line
            main={email}
            sub={t("invitations.open.until", { role: t(`role.${role}`), until: when(expiresAt) })}
            end={
              <Button
                variant="default"
                size="sm"
                aria-label={t("invitations.revoke.of", { email })}
                onClick={() => revoke.mutate(id)}
              >
                {t("invitations.revoke")}
              </Button>
            }
          />
        )}
      />
    </div>
  );
};
