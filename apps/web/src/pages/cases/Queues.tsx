import { useInfiniteQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import styles from "../../features/cases/Cases.module.css";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";
import { useText } from "../../strings/text";
import { Line, List } from "../../ui/List";
import { Empty, Page, Tag } from "../../ui/Page";

const queues = [
  { to: "/complaints", words: "nav.complaints", what: "queues.complaints.what" },
  { to: "/admissions", words: "nav.admissions", what: "queues.admissions.what" },
  { to: "/appointments", words: "nav.appointments", what: "queues.visits.what" },
] as const;

const organizationsQuery = pagedQuery(["organizations"], (after, signal) =>
  call("organizations.list", { query: { after }, signal }),
);

const Firms = () => {
  const t = useText();
  const organizations = useInfiniteQuery(organizationsQuery);
  return (
    <section className={styles.part}>
      <h2>{t("queues.firms")}</h2>
      <List
        query={organizations}
        keyOf={({ id }) => id}
        renderRow={({ name, place, kind }) => (
          <Line main={name} sub={place ?? undefined} end={<Tag>{t(`organization.kind.${kind}`)}</Tag>} />
        )}
        empty={<Empty title={t("queues.firms.none")} />}
      />
    </section>
  );
};

/** The operator's lists, each whole. */
export const Queues = () => {
  const t = useText();
  return (
    <Page title={t("queues.title")} under={t("queues.what")} narrow>
      <div className={styles.sheet}>
        <ul className={styles.partList}>
          {queues.map(({ to, words, what }) => (
            <li key={to}>
              <Line main={<Link to={to}>{t(words)}</Link>} sub={t(what)} />
            </li>
          ))}
        </ul>
        <Firms />
      </div>
    </Page>
  );
};
