import { Button } from "@mantine/core";
import type { CalendarSeen } from "@evenhand/shared/http/calendars";
import { keepPreviousData, useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useEdited } from "../../service/use-edited";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page, Panel, Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { bandsOfInspector } from "../../features/calendars/bands";
import { timeOf, typedCalendar, wrongFields } from "../../features/calendars/calendar-form";
import { CalendarFields } from "../../features/calendars/CalendarFields";
import styles from "../../features/calendars/Calendars.module.css";
import { Declarations } from "../../features/calendars/Declarations";
import { calendarDaysQuery, calendarQuery } from "../../entities/calendar/queries";
import { TrialWeek } from "../../features/calendars/TrialWeek";
import { useFieldNames } from "../../features/calendars/use-field-names";
import { useTimes } from "../../entities/time/use-times";
import { hoursOf } from "../../features/calendars/weekly-hours";
import { WeekView } from "../../features/calendars/WeekView";
import { WrongFields } from "../../features/calendars/WrongFields";
import { mondayOf, today } from "../../entities/time/zone-time";

const route = getRouteApi("/signed-in/calendars/$calendar");

const SavedWeek = ({ calendar }: { readonly calendar: CalendarSeen }) => {
  const t = useText();
  const times = useTimes();
  const { zone } = calendar.hours;
  const [monday, setMonday] = useState(() => mondayOf(today(zone)));
  const days = useQuery({
    ...calendarDaysQuery(calendar.id, monday),
    placeholderData: keepPreviousData,
  });
  return (
    <Panel
      title={t("week.title")}
      hint={t("week.hint", {
        name: times.zoneName(`${monday}T12:00:00Z`, zone),
        zone: zone.replaceAll("_", " "),
      })}
      actions={
        <LinkButton variant="default" to="/day" search={{ calendar: calendar.id }}>
          {t("nav.day")}
        </LinkButton>
      }
    >
      {days.error !== null && <ProblemNotice error={days.error} />}
      {days.isPending && <Loading />}
      {days.data !== undefined && (
        <WeekView monday={monday} zone={zone} bands={bandsOfInspector(days.data)} onWeek={setMonday} />
      )}
    </Panel>
  );
};

const Admission = ({ calendar: { admission } }: { readonly calendar: CalendarSeen }) => {
  const t = useText();
  if (admission === "admitted") return null;
  return (
    <Notice kind="note" title={t("calendar.wait.title")}>
      <p>
        {admission === "applied"
          ? t("calendar.wait.what")
          : t("calendar.suspended.what", { state: admission })}
      </p>
    </Notice>
  );
};

const Editor = ({ calendar }: { readonly calendar: CalendarSeen }) => {
  const t = useText();
  const queries = useQueryClient();
  const fieldNames = useFieldNames();
  const { revision, typed, touched, change, settle } = useEdited(calendar, typedCalendar);
  const [tried, setTried] = useState(false);
  const wrong = wrongFields(typed);
  const save = useMutation({
    mutationFn: () =>
      call("calendars.change", {
        params: { id: calendar.id },
        ifMatch: revision,
        body: { ...timeOf(typed), name: typed.name, accepting: typed.accepting },
      }),
    onSuccess: async () => {
      // The week beside it shows what is stored: never, for a moment, what was stored before.
      queries.removeQueries({ queryKey: ["calendar-days", calendar.id] });
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
    <div className={styles.columns}>
      <div className={styles.stack}>
        <form className={styles.stack} onSubmit={submit}>
          <CalendarFields value={typed} onChange={change} />
          {tried && <WrongFields names={fieldNames(wrong)} />}
          {save.error !== null && <ProblemNotice error={save.error} />}
          <div className={styles.buttons}>
            <Button type="submit" size="md" loading={save.isPending}>
              {t("calendar.save")}
            </Button>
            <span aria-live="polite">{save.isSuccess && !touched && t("calendar.saved")}</span>
          </div>
        </form>
        <Declarations calendar={calendar} />
      </div>
      <div className={styles.side}>
        {touched ? <TrialWeek hours={hoursOf(typed.hours)} /> : <SavedWeek calendar={calendar} />}
      </div>
    </div>
  );
};

/** One inspector's hours, travel, fees, skills and declarations, with the week beside them. */
export const CalendarPage = () => {
  const t = useText();
  const { calendar: id } = route.useParams();
  const { data: calendar, error } = useQuery(calendarQuery(id));
  if (error) {
    return (
      <Page title={t("calendars.title")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!calendar) return <Loading />;
  return (
    <Page
      title={t("calendar.title", { name: calendar.name })}
      over={<Link to="/calendars">{t("nav.calendars")}</Link>}
      under={calendar.firm.name}
      actions={<Tag>{t(`admission.${calendar.admission}`)}</Tag>}
    >
      <Admission calendar={calendar} />
      <Editor key={calendar.id} calendar={calendar} />
    </Page>
  );
};
