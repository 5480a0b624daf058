import type { SiteSeen } from "@evenhand/shared/http/sites";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { siteEntry } from "../../features/calendars/entries";
import { SiteWeek } from "../../features/calendars/SavedWeeks";
import { SiteFields } from "../../features/calendars/SiteFields";
import { TypedForm } from "../../features/calendars/TypedForm";
import { useStoredForm } from "../../features/calendars/use-typed-form";
import { siteQuery } from "../../entities/calendar/queries";

const route = getRouteApi("/signed-in/sites/$site");

const Editor = ({ site }: { readonly site: SiteSeen }) => {
  const t = useText();
  const form = useStoredForm(site, siteEntry);
  return (
    <TypedForm form={form} button={t("calendar.save")} stored={<SiteWeek site={site} />}>
      <SiteFields value={form.typed} onChange={form.change} />
    </TypedForm>
  );
};

/** One site with its hours, lifts and times without access, and the week beside them. */
export const SitePage = () => {
  const t = useText();
  const { site: id } = route.useParams();
  const { data: site, error } = useQuery(siteQuery(id));
  if (error) {
    return (
      <Page title={t("sites.title")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!site) return <Loading />;
  return (
    <Page title={site.name} over={<Link to="/sites">{t("nav.sites")}</Link>} under={site.address}>
      <Editor key={site.id} site={site} />
    </Page>
  );
};
