import type { Membership } from "@evenhand/shared/http/accounts";
import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useState } from "react";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Empty, Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useAccount } from "../../entities/account/queries";
import { FirmChoice, type Choice } from "../../entities/account/FirmChoice";
import { firmsOf } from "../../entities/account/firms";
import styles from "../../features/handbook/OwnFigures.module.css";
import { OwnFiguresEditor, OwnFiguresRead } from "../../features/handbook/OwnFiguresEditor";
import { firmHandbookQuery } from "../../features/handbook/queries";

/** What the figures do and what they do not. */
const What = () => {
  const t = useText();
  return (
    <Panel title={t("own.what")}>
      <ul className={styles.what}>
        {(["practice", "sealed", "judged"] as const).map((name) => (
          <li key={name}>{t(`own.what.${name}`)}</li>
        ))}
      </ul>
      <Notice kind="caution" title={t("own.law")}>
        <p>{t("own.law.what")}</p>
      </Notice>
    </Panel>
  );
};

interface FirmProps {
  readonly membership: Membership;
  readonly choice: Choice;
}

const OneFirm = ({ membership: { organization, role }, choice }: FirmProps) => {
  const t = useText();
  const { data: seen, error } = useQuery(firmHandbookQuery(organization.id));
  if (seen === undefined) {
    return (
      <>
        <FirmChoice choice={choice} />
        {error === null ? <Loading /> : <ProblemNotice error={error} />}
      </>
    );
  }
  if (role === "admin") {
    return <OwnFiguresEditor organization={organization.id} seen={seen} choice={choice} />;
  }
  return (
    <>
      <FirmChoice choice={choice} />
      <Notice kind="note">
        <p>{t("own.read-only", { firm: organization.name })}</p>
      </Notice>
      <OwnFiguresRead seen={seen} />
    </>
  );
};

const Nobody = () => {
  const t = useText();
  return (
    <Empty title={t("own.nobody")}>
      <p>{t("own.nobody.what")}</p>
      <LinkButton variant="default" to="/handbook">
        {t("own.nobody.to")}
      </LinkButton>
    </Empty>
  );
};

/** A firm's own figures for the rules of the handbook, and what it knows of makes. */
export const OwnFigures = () => {
  const t = useText();
  const firms = firmsOf(useAccount());
  const [chosen, setChosen] = useState("");
  const membership = firms.find(({ organization }) => organization.id === chosen) ?? firms[0];
  return (
    <Page
      title={t("own.title")}
      over={<Link to="/handbook">{t("nav.handbook")}</Link>}
      under={t("own.under")}
      narrow
    >
      <What />
      {membership === undefined ? (
        <Nobody />
      ) : (
        <OneFirm
          key={membership.organization.id}
          membership={membership}
          choice={{ firms, value: membership.organization.id, onChange: setChosen }}
        />
      )}
    </Page>
  );
};
