import { Button } from "@mantine/core";
import type { InspectorDay as Day } from "@evenhand/shared/http/booking/calendar-views";
import type { CalendarSeen } from "@evenhand/shared/http/calendars";
import { useInfiniteQuery, useQuery } from "@tanstack/react-query";
import { getRouteApi } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { ChoiceField, TextField } from "../../ui/Fields";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Empty, Facts, Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { bandsOfInspector, onDate } from "../../features/calendars/bands";
import { calendarDaysQuery, calendarsQuery } from "../../entities/calendar/queries";
import { useTimes } from "../../entities/time/use-times";
import { BandKey, DayBar, HourScale } from "../../features/calendars/DayBar";
import { isDate } from "../../entities/time/is-date";
import { addDays, today } from "../../entities/time/zone-time";
import styles from "../../features/booking/Booking.module.css";
import { DayRoute } from "../../features/booking/DayRoute";
import { RouteMap } from "../../features/booking/RouteMap";

const route = getRouteApi("/signed-in/day");

const DayFacts = ({ day, zone }: { readonly day: Day; readonly zone: string }) => {
  const t = useText();
  const times = useTimes();
  const list = (stretches: Day["open"]): string =>
    stretches.map(({ start, end }) => times.range(start, end, zone)).join("; ");
  const daylight = day.daylight.map(({ start, end }) =>
    t("day.daylight.line", { from: times.time(start, zone), to: times.time(end, zone) }),
  );
  return (
    <Facts
      rows={[
        [t("day.open"), day.open.length === 0 ? t("day.open.none") : list(day.open)],
        ...(day.away.length === 0 ? [] : [[t("day.away"), list(day.away)] as const]),
        [t("day.daylight"), daylight.length === 0 ? t("day.daylight.none") : daylight.join("; ")],
      ]}
    />
  );
};

interface DayProps {
  readonly calendar: CalendarSeen;
  readonly date: string;
}

/** Visits in their order with the ways between them. */
const RoutePanel = ({ day, zone }: { readonly day: Day; readonly zone: string }) => {
  const t = useText();
  if (day.engagements.length === 0) {
    return (
      <Panel title={t("day.route")} hint={t("day.route.hint")}>
        <Empty title={t("day.none")}>{t("day.none.hint", { open: day.open.length })}</Empty>
      </Panel>
    );
  }
  return (
    <Panel title={t("day.route")} hint={t("day.route.hint")}>
      <Notice kind="caution">
        <p>{t("day.caution")}</p>
      </Notice>
      <DayRoute engagements={day.engagements} zone={zone} />
    </Panel>
  );
};

const OneDay = ({ calendar, date }: DayProps) => {
  const days = useQuery(calendarDaysQuery(calendar.id, date, 1));
  if (days.error) return <ProblemNotice error={days.error} />;
  const day = days.data?.days[0];
  if (!days.data || !day) return <Loading />;
  const { zone } = days.data;
  return (
    <div className={styles.columns}>
      <div className={styles.stack}>
        <RoutePanel day={day} zone={zone} />
      </div>
      <div className={styles.stack}>
        <Panel>
          <BandKey />
          <div>
            <HourScale date={date} zone={zone} flush />
            <DayBar bands={onDate(bandsOfInspector(days.data), date, zone)} />
          </div>
          <DayFacts day={day} zone={zone} />
          {day.engagements.length > 0 && (
            <RouteMap base={calendar.base} stops={day.engagements.map(({ site }) => site)} />
          )}
        </Panel>
      </div>
    </div>
  );
};

interface Choosing extends DayProps {
  readonly calendars: readonly CalendarSeen[];
  readonly go: (next: { date?: string; calendar?: string }) => void;
}

/** Which day, and of whom where it may be several. */
const DayChoice = ({ calendar, calendars, date, go }: Choosing) => {
  const t = useText();
  return (
    <div className={styles.choosing}>
      <TextField
        type="date"
        label={t("day.date")}
        value={date}
        onChange={(typed) => {
          if (isDate(typed)) go({ date: typed });
        }}
      />
      {calendars.length > 1 && (
        <ChoiceField
          label={t("day.of")}
          value={calendar.id}
          data={calendars.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(id) => go({ calendar: id })}
        />
      )}
      <DaySteps date={date} go={go} />
    </div>
  );
};

const DaySteps = ({ date, go }: Pick<Choosing, "date" | "go">) => {
  const t = useText();
  return (
    <div className={styles.buttons}>
      <Button variant="default" size="md" onClick={() => go({ date: addDays(date, -1) })}>
        {t("day.before")}
      </Button>
      <Button variant="default" size="md" onClick={() => go({ date: addDays(date, 1) })}>
        {t("day.after")}
      </Button>
    </div>
  );
};

const NoCalendar = () => {
  const t = useText();
  return (
    <Page title={t("nav.day")} narrow>
      <Empty title={t("day.no-calendar")}>
        <p>{t("day.no-calendar.hint")}</p>
        <LinkButton to="/calendars">{t("nav.calendars")}</LinkButton>
      </Empty>
    </Page>
  );
};

const DayPage = (choosing: Choosing) => {
  const t = useText();
  const times = useTimes();
  const { calendar, date } = choosing;
  const { zone } = calendar.hours;
  return (
    <Page
      title={t("day.title", { name: calendar.name })}
      under={t("day.under", {
        name: times.zoneName(`${date}T12:00:00Z`, zone),
        zone: zone.replaceAll("_", " "),
      })}
    >
      <DayChoice {...choosing} />
      <h2 aria-live="polite">{times.date(date)}</h2>
      <OneDay calendar={calendar} date={date} />
    </Page>
  );
};

/** The inspector's day: from the base to each visit and back, in the daylight there is. */
export const InspectorDay = () => {
  const t = useText();
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const { data: calendars, error } = useInfiniteQuery(calendarsQuery);
  if (error) {
    return (
      <Page title={t("nav.day")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!calendars) return <Loading />;
  const calendar = calendars.find(({ id }) => id === search.calendar) ?? calendars[0];
  if (!calendar) return <NoCalendar />;
  const date = search.date ?? today(calendar.hours.zone);
  const go: Choosing["go"] = (next) =>
    void navigate({ search: (before) => ({ ...before, ...next }), replace: true });
  return <DayPage calendar={calendar} calendars={calendars} date={date} go={go} />;
};
