import type { ComplaintSeen } from "@evenhand/shared/http/complaints";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { RefusedPage } from "../../ui/Failed";
import { Loading } from "../../ui/Loading";
import { Facts, Page, Panel, Tag } from "../../ui/Page";
import { isKind, useAccount } from "../../entities/account/queries";
import styles from "../../features/complaints/Complaints.module.css";
import { OperatorMoves } from "../../features/complaints/OperatorMoves";
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

/** Who complained, about what and when; and in which words, to whoever may read them. */
const Complained = ({ complaint }: Props) => {
  const t = useText();
  const intl = useIntl();
  const received = intl.formatDate(complaint.receivedAt, { dateStyle: "long", timeStyle: "short" });
  return (
    <Panel title={t("complaint.text")}>
      <Facts
        rows={[
          [t("complaint.from"), complaint.from?.name ?? t("complaint.closed")],
          [t("complaint.about"), <About key="about" complaint={complaint} />],
          [t("complaint.received"), received],
        ]}
      />
      {complaint.text !== null && <p className={styles.said}>{complaint.text}</p>}
    </Panel>
  );
};

/** One complaint: to whoever sent it everything; to the operator its contents only once opened. */
export const ComplaintPage = () => {
  const t = useText();
  const operates = isKind(useAccount(), "operator");
  const { complaint: id } = route.useParams();
  const { data: complaint, error } = useQuery(complaintQuery(id));
  if (error) return <RefusedPage title={t("complaint.title")} error={error} />;
  if (!complaint) return <Loading />;
  return (
    <Page
      title={t("complaint.title")}
      over={<Link to="/complaints">{t("nav.complaints")}</Link>}
      actions={<Tag>{t(`complaints.state.${complaint.state}`)}</Tag>}
      narrow
    >
      <Complained complaint={complaint} />
      {operates && <OperatorMoves complaint={complaint} />}
      <Panel title={t("complaint.reply")}>
        <p className={styles.said}>{complaint.reply ?? t("complaint.reply.none")}</p>
      </Panel>
      <Openings complaint={complaint} />
    </Page>
  );
};
