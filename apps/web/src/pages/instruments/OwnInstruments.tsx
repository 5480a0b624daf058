import type { Membership } from "@evenhand/shared/http/accounts";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Empty, Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useAccount } from "../../entities/account/queries";
import { FirmChoice } from "../../entities/account/FirmChoice";
import { firmsOf } from "../../entities/account/firms";
import { InstrumentPanels, InstrumentsEditor } from "../../features/instruments/InstrumentsEditor";
import { firmInstrumentsQuery } from "../../features/instruments/queries";

const OneFirm = ({ membership: { organization, role } }: { readonly membership: Membership }) => {
  const t = useText();
  const { data: seen, error } = useQuery(firmInstrumentsQuery(organization.id));
  if (seen === undefined) return error === null ? <Loading /> : <ProblemNotice error={error} />;
  if (role === "admin") return <InstrumentsEditor organization={organization.id} seen={seen} />;
  return (
    <>
      <Notice kind="note">
        <p>{t("own-instruments.read-only", { firm: organization.name })}</p>
      </Notice>
      <InstrumentPanels seen={seen} />
    </>
  );
};

/** What a firm measures with, from which its reports are begun. */
export const OwnInstruments = () => {
  const t = useText();
  const firms = firmsOf(useAccount());
  const [chosen, setChosen] = useState("");
  const membership = firms.find(({ organization }) => organization.id === chosen) ?? firms[0];
  return (
    <Page title={t("own-instruments.title")} under={t("own-instruments.under")} narrow>
      {membership === undefined ? (
        <Empty title={t("own-instruments.nobody")}>
          <p>{t("own-instruments.nobody.what")}</p>
        </Empty>
      ) : (
        <>
          <FirmChoice choice={{ firms, value: membership.organization.id, onChange: setChosen }} />
          <OneFirm key={membership.organization.id} membership={membership} />
        </>
      )}
    </Page>
  );
};
