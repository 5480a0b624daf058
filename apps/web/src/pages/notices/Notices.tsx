import { Button } from "@mantine/core";
import { useInfiniteQuery, useQuery } from "@tanstack/react-query";
import { accountQuery } from "../../entities/account/queries";
import { NoticeLine } from "../../features/notices/NoticeLine";
import { noticesQuery, useReading } from "../../features/notices/queries";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { LinkButton } from "../../ui/LinkButton";
import { List } from "../../ui/List";
import { Empty, Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";

const NoNotices = () => {
  const t = useText();
  return (
    <Empty title={t("notices.none")}>
      <p>{t("notices.none.hint")}</p>
      <LinkButton variant="default" to="/account">
        {t("notices.by-mail")}
      </LinkButton>
    </Empty>
  );
};

/** What happened that concerns the reader, the newest first. The count in the head is asked for anew with it. */
export const Notices = () => {
  const t = useText();
  const unread = useQuery({ ...accountQuery, staleTime: 0 }).data?.unread ?? 0;
  const notices = useInfiniteQuery(noticesQuery);
  const [one, all] = [useReading(), useReading()];
  const newest = notices.data?.[0];
  const markAll = unread > 0 && newest !== undefined && (
    <Button variant="default" loading={all.isPending} onClick={() => all.mutate({ upTo: newest.id })}>
      {t("notices.all")}
    </Button>
  );
  const error = all.error ?? one.error;
  return (
    <Page title={t("notices.title")} under={t("notices.under")} narrow actions={markAll}>
      {error !== null && <ProblemNotice error={error} />}
      {all.isSuccess && unread === 0 && <Answered title={t("notices.all.done")} />}
      <Panel>
        <List
          query={notices}
          keyOf={({ id }) => id}
          renderRow={(notice) => (
            <NoticeLine notice={notice} onRead={() => one.mutate({ only: notice.id })} />
          )}
          empty={<NoNotices />}
        />
      </Panel>
    </Page>
  );
};
