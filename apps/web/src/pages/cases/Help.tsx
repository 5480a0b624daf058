import type { OrganizationKind } from "@evenhand/shared/access";
import { CaseStage } from "@evenhand/shared/http/cases";
import { Link } from "@tanstack/react-router";
import { isKind, useAccount } from "../../entities/account/queries";
import styles from "../../features/cases/Cases.module.css";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { Facts, Page } from "../../ui/Page";

const parties: readonly OrganizationKind[] = ["buyer", "dealer", "inspector"];
const lists = [
  { to: "/appointments", words: "nav.appointments", what: "help.visits.what", kinds: parties },
  { to: "/questions", words: "nav.questions", what: "help.questions.what", kinds: ["buyer", "dealer"] },
  { to: "/released", words: "nav.released", what: "help.released.what", kinds: ["buyer", "dealer"] },
  { to: "/decisions", words: "nav.decisions", what: "help.decisions.what", kinds: ["buyer", "dealer"] },
] as const;

const TheWay = () => {
  const t = useText();
  return (
    <section className={styles.part}>
      <h2>{t("help.way")}</h2>
      <Facts rows={CaseStage.options.map((stage) => [t(`case.stage.${stage}`), t(`help.way.${stage}`)])} />
      <p className={styles.none}>{t("help.marks")}</p>
    </section>
  );
};

const Lists = () => {
  const t = useText();
  const account = useAccount();
  const own = lists.filter(({ kinds }) => kinds.some((kind) => isKind(account, kind)));
  if (own.length === 0) return null;
  return (
    <section className={styles.part}>
      <h2>{t("help.lists")}</h2>
      <ul className={styles.partList}>
        {own.map(({ to, words, what }) => (
          <li key={to}>
            <Line main={<Link to={to}>{t(words)}</Link>} sub={t(what)} />
          </li>
        ))}
      </ul>
    </section>
  );
};

/** How a case goes, the handbook, where to complain, and the lists across all cases. */
export const Help = () => {
  const t = useText();
  return (
    <Page title={t("help.title")} narrow>
      <div className={styles.sheet}>
        <TheWay />
        <section className={styles.part}>
          <h2>{t("help.more")}</h2>
          <ul className={styles.partList}>
            <li>
              <Line main={<Link to="/handbook">{t("nav.handbook")}</Link>} sub={t("help.handbook.what")} />
            </li>
            <li>
              <Line
                main={<Link to="/complaints">{t("nav.complaints")}</Link>}
                sub={t("help.complaints.what")}
              />
            </li>
          </ul>
        </section>
        <Lists />
      </div>
    </Page>
  );
};
