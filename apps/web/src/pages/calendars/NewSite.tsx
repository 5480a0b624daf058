import { Link, useNavigate } from "@tanstack/react-router";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { ChoiceField } from "../../ui/Fields";
import { Page } from "../../ui/Page";
import { organizationsOf, useAccount } from "../../entities/account/queries";
import { siteEntry } from "../../features/calendars/entries";
import { firstSite, siteOf, type SiteTyped } from "../../features/calendars/site-form";
import { SiteFields } from "../../features/calendars/SiteFields";
import { TypedForm } from "../../features/calendars/TypedForm";
import { useNewForm } from "../../features/calendars/use-typed-form";

const useEntering = (organization: string) => {
  const navigate = useNavigate();
  return useNewForm(siteEntry, {
    first: firstSite,
    create: (typed: SiteTyped) =>
      call("sites.create", {
        body: { organization, ...siteOf(typed), bays: typed.bays.map(({ name }) => name) },
      }),
    open: (id) => navigate({ to: "/sites/$site", params: { site: id } }),
  });
};

/** A dealer enters a site. */
export const NewSite = () => {
  const t = useText();
  const firms = organizationsOf(useAccount(), "dealer");
  const [organization, setOrganization] = useState(firms[0]?.id ?? "");
  const form = useEntering(organization);
  return (
    <Page title={t("site.new")} over={<Link to="/sites">{t("nav.sites")}</Link>}>
      <TypedForm form={form} button={t("site.create")}>
        {firms.length > 1 && (
          <ChoiceField
            label={t("site.dealer")}
            value={organization}
            data={firms.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={setOrganization}
          />
        )}
        <SiteFields value={form.typed} onChange={form.change} />
      </TypedForm>
    </Page>
  );
};
