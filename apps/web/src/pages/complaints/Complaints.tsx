import type { ComplaintSeen } from "@evenhand/shared/http/complaints";
import { useInfiniteQuery, useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { dotted } from "../../ui/dotted";
import { Line, List } from "../../ui/List";
import { Empty, Facts, Page, Panel, Tag } from "../../ui/Page";
import { isKind, useAccount } from "../../entities/account/queries";
import { complaintCountsQuery, complaintsQuery } from "../../features/complaints/queries";
import { SendComplaint } from "../../features/complaints/SendComplaint";

const Counts = () => {
  const t = useText();
  const intl = useIntl();
  const counts = useQuery(complaintCountsQuery).data;
  if (!counts) return null;
  return (
    <Panel title={t("complaints.counts")}>
      <Facts
        rows={[
          ...counts.counts.map(
            ({ state, count }) => [t(`complaints.state.${state}`), intl.formatNumber(count)] as const,
          ),
          [
            t("complaints.oldest"),
            counts.oldestWaiting === null
              ? t("complaints.oldest.none")
              : intl.formatDate(counts.oldestWaiting, { dateStyle: "long", timeStyle: "short" }),
          ],
        ]}
      />
    </Panel>
  );
};

const ComplaintLine = ({ complaint }: { readonly complaint: ComplaintSeen }) => {
  const t = useText();
  const intl = useIntl();
  const { id, state, text, about, receivedAt } = complaint;
  const when = intl.formatDate(receivedAt, { dateStyle: "long", timeStyle: "short" });
  return (
    <Line
      main={
        <Link to="/complaints/$complaint" params={{ complaint: id }}>
          {about === null ? t("complaint.title") : t(`complaint.about.${about.kind}`)}
        </Link>
      }
      sub={dotted([t("complaints.line", { when }), text?.slice(0, 90)])}
      end={<Tag strong={state === "received"}>{t(`complaints.state.${state}`)}</Tag>}
    />
  );
};

const NoComplaints = ({ operates }: { readonly operates: boolean }) => {
  const t = useText();
  if (operates) return <Empty title={t("complaints.none.operator")} />;
  return <Empty title={t("complaints.none")}>{t("complaints.none.hint")}</Empty>;
};

/** What somebody complained of, or, for the operator, what waits. */
export const Complaints = () => {
  const t = useText();
  const account = useAccount();
  const complaints = useInfiniteQuery(complaintsQuery);
  const operates = isKind(account, "operator");
  return (
    <Page
      title={t("complaints.title")}
      under={t(operates ? "complaints.under.operator" : "complaints.under")}
      narrow
    >
      {operates && <Counts />}
      <Panel>
        <List
          query={complaints}
          keyOf={({ id }) => id}
          renderRow={(complaint) => <ComplaintLine complaint={complaint} />}
          empty={<NoComplaints operates={operates} />}
        />
      </Panel>
      {!operates && <SendComplaint />}
    </Page>
  );
};
