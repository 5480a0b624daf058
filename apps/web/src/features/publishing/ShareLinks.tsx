import { Button } from "@mantine/core";
import type { ShareLinkSeen } from "@evenhand/shared/http/publishing";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { dotted } from "../../ui/dotted";
import { Line, List } from "../../ui/List";
import { Empty, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { MakeLink } from "./MakeLink";
import { shareLinksQuery } from "./queries";

type Standing = "revoked" | "ended" | "until";

/** Whether a link still leads to the statement, and how it came to an end. */
const standingOf = ({ revokedAt, expires }: ShareLinkSeen, now: number): Standing => {
  if (revokedAt !== null) return "revoked";
  return Date.parse(expires) <= now ? "ended" : "until";
};

interface LineProps {
  readonly link: ShareLinkSeen;
  readonly now: number;
  readonly pending: boolean;
  readonly onRevoke: () => void;
}

const LinkLine = ({ link, now, pending, onRevoke }: LineProps) => {
  const t = useText();
  const intl = useIntl();
  const standing = standingOf(link, now);
  const when = intl.formatDate(link.revokedAt ?? link.expires, { dateStyle: "medium" });
  const revoke = (
    <Button
      variant="default"
      size="xs"
      aria-label={`${t("share.revoke")}: ${link.name}`}
      loading={pending}
      onClick={onRevoke}
    >
      {t("share.revoke")}
    </Button>
  );
  return (
    <Line
      main={link.name}
      sub={dotted([t(`share.line.${standing}`, { when }), t("share.line.reads", { count: link.reads })])}
      end={standing === "until" ? revoke : undefined}
    />
  );
};

/** Links for people with no account: made, counted, revoked. */
export const ShareLinks = ({ vehicle }: { readonly vehicle: string }) => {
  const t = useText();
  const queries = useQueryClient();
  const links = useInfiniteQuery(shareLinksQuery(vehicle));
  const revoke = useMutation({
    mutationFn: (id: string) => call("shareLinks.revoke", { params: { id } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["share-links", vehicle] }),
  });
  const [now] = useState(() => Date.now());
  const row = (link: ShareLinkSeen) => (
    <LinkLine
      link={link}
      now={now}
      pending={revoke.isPending && revoke.variables === link.id}
      onRevoke={() => revoke.mutate(link.id)}
    />
  );
  return (
    <Panel title={t("share.title")} hint={t("share.hint")}>
      {revoke.error !== null && <ProblemNotice error={revoke.error} />}
      <List query={links} keyOf={({ id }) => id} renderRow={row} empty={<Empty title={t("share.none")} />} />
      <MakeLink vehicle={vehicle} />
    </Panel>
  );
};
