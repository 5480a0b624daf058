import { Button } from "@mantine/core";
import type { SiteSeen } from "@evenhand/shared/http/calendars";
import { keepPreviousData, useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useEdited } from "../../service/use-edited";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { bandsOfSite } from "../../features/calendars/bands";
import styles from "../../features/calendars/Calendars.module.css";
import { siteDaysQuery, siteQuery } from "../../entities/calendar/queries";
import { siteOf, typedSite, wrongSiteFields } from "../../features/calendars/site-form";
import { SiteFields } from "../../features/calendars/SiteFields";
import { TrialWeek } from "../../features/calendars/TrialWeek";
import { useSiteFieldNames } from "../../features/calendars/use-site-field-names";
import { useTimes } from "../../entities/time/use-times";
import { hoursOf } from "../../features/calendars/weekly-hours";
import { WeekView } from "../../features/calendars/WeekView";
import { WrongFields } from "../../features/calendars/WrongFields";
import { mondayOf, today } from "../../entities/time/zone-time";

const route = getRouteApi("/signed-in/sites/$site");

const SavedWeek = ({ site }: { readonly site: SiteSeen }) => {
  const t = useText();
  const times = useTimes();
  const { zone } = site.hours;
  const [monday, setMonday] = useState(() => mondayOf(today(zone)));
  const days = useQuery({ ...siteDaysQuery(site.id, monday), placeholderData: keepPreviousData });
  return (
    <Panel
      title={t("week.title")}
      hint={t("week.hint", {
        name: times.zoneName(`${monday}T12:00:00Z`, zone),
        zone: zone.replaceAll("_", " "),
      })}
    >
      {days.error !== null && <ProblemNotice error={days.error} />}
      {days.isPending && <Loading />}
      {days.data !== undefined && (
        <WeekView monday={monday} zone={zone} bands={bandsOfSite(days.data)} onWeek={setMonday} />
      )}
    </Panel>
  );
};

const Editor = ({ site }: { readonly site: SiteSeen }) => {
  const t = useText();
  const queries = useQueryClient();
  const names = useSiteFieldNames();
  const { revision, typed, touched, change, settle } = useEdited(site, typedSite);
  const [tried, setTried] = useState(false);
  const wrong = wrongSiteFields(typed);
  const save = useMutation({
    mutationFn: () =>
      call("sites.change", {
        params: { id: site.id },
        ifMatch: revision,
        body: { ...siteOf(typed), bays: typed.bays.map(({ id, name }) => ({ id, name })) },
      }),
    onSuccess: async () => {
      // The week beside it shows what is stored: never, for a moment, what was stored before.
      queries.removeQueries({ queryKey: ["site-days", site.id] });
      await queries.invalidateQueries();
      settle();
    },
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    setTried(true);
    if (wrong.length === 0) save.mutate();
  };
  return (
    <form className={styles.columns} onSubmit={submit}>
      <div className={styles.stack}>
        <SiteFields value={typed} onChange={change} />
        {tried && <WrongFields names={names(wrong)} />}
        {save.error !== null && <ProblemNotice error={save.error} />}
        <div className={styles.buttons}>
          <Button type="submit" size="md" loading={save.isPending}>
            {t("calendar.save")}
          </Button>
          <span aria-live="polite">{save.isSuccess && !touched && t("calendar.saved")}</span>
        </div>
      </div>
      <div className={styles.side}>
        {touched ? <TrialWeek hours={hoursOf(typed.hours)} /> : <SavedWeek site={site} />}
      </div>
    </form>
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
