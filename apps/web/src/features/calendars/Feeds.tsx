import { Button } from "@mantine/core";
import type { FeedSeen } from "@evenhand/shared/http/booking/calendar-views";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Line, List } from "../../ui/List";
import { Empty, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { feedsQuery } from "../../entities/calendar/queries";
import { MakeFeed } from "./MakeFeed";

interface LineProps {
  readonly feed: FeedSeen;
  readonly revoking: boolean;
  readonly onRevoke: () => void;
}

const FeedLine = ({ feed: { name, organization, readAt }, revoking, onRevoke }: LineProps) => {
  const t = useText();
  const intl = useIntl();
  const read =
    readAt === null
      ? t("feeds.not-read")
      : t("feeds.read", { when: intl.formatDate(readAt, { dateStyle: "medium", timeStyle: "short" }) });
  const revoke = (
    <Button
      variant="default"
      size="xs"
      aria-label={`${t("feeds.revoke")}: ${name}`}
      loading={revoking}
      onClick={onRevoke}
    >
      {t("feeds.revoke")}
    </Button>
  );
  return <Line main={name} sub={`${organization.name} · ${read}`} end={revoke} />;
};

/** Private addresses from which calendar programs read the person's visits. */
export const FeedsPanel = () => {
  const t = useText();
  const queries = useQueryClient();
  const feeds = useInfiniteQuery(feedsQuery);
  const revoke = useMutation({
    mutationFn: (id: string) => call("calendarFeeds.revoke", { params: { id } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: feedsQuery.queryKey }),
  });
  const rowOf = (feed: FeedSeen) => (
    <FeedLine
      feed={feed}
      revoking={revoke.isPending && revoke.variables === feed.id}
      onRevoke={() => revoke.mutate(feed.id)}
    />
  );
  const none = <Empty title={t("feeds.none")} />;
  return (
    <Panel title={t("feeds.title")} hint={t("feeds.hint")}>
      {revoke.error !== null && <ProblemNotice error={revoke.error} />}
      <List query={feeds} keyOf={({ id }) => id} renderRow={rowOf} empty={none} />
      <MakeFeed />
    </Panel>
  );
};
