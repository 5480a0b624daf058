import { Button, NativeSelect, TextInput } from "@mantine/core";
import type { CalendarSeen, InspectorDay as Day } from "@evenhand/shared/http/calendars";
import { useInfiniteQuery, useQuery } from "@tanstack/react-query";
import { getRouteApi } from "@tanstack/react-router";
import { useText } from "../../strings/text";
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

const OneDay = ({ calendar, date }: { readonly calendar: CalendarSeen; readonly date: string }) => {
  const t = useText();
  const days = useQuery(calendarDaysQuery(calendar.id, date, 1));
  if (days.error) return <ProblemNotice error={days.error} />;
  const day = days.data?.days[0];
  if (!days.data || !day) return <Loading />;
  const { zone } = days.data;
  return (
    <div className={styles.columns}>
      <div className={styles.stack}>
        <Panel title={t("day.route")} hint={t("day.route.hint")}>
          {day.engagements.length === 0 ? (
            <Empty title={t("day.none")}>{t("day.none.hint", { open: day.open.length })}</Empty>
          ) : (
            <>
              <Notice kind="caution">
                <p>{t("day.caution")}</p>
              </Notice>
              <DayRoute engagements={day.engagements} zone={zone} />
            </>
          )}
        </Panel>
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

/** The inspector's day: from the base to each visit and back, in the daylight there is. */
export const InspectorDay = () => {
  const t = useText();
  const times = useTimes();
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const calendars = useInfiniteQuery(calendarsQuery);
  if (calendars.error) {
    return (
      <Page title={t("nav.day")} narrow>
        <ProblemNotice error={calendars.error} />
      </Page>
    );
  }
  if (!calendars.data) return <Loading />;
  const calendar = calendars.data.find(({ id }) => id === search.calendar) ?? calendars.data[0];
  if (!calendar) {
    return (
      <Page title={t("nav.day")} narrow>
        <Empty title={t("day.no-calendar")}>
          <p>{t("day.no-calendar.hint")}</p>
          <LinkButton to="/calendars">{t("nav.calendars")}</LinkButton>
        </Empty>
      </Page>
    );
  }
  const { zone } = calendar.hours;
  const date = search.date ?? today(zone);
  const go = (next: { date?: string; calendar?: string }): void =>
    void navigate({ search: (before) => ({ ...before, ...next }), replace: true });
  return (
    <Page
      title={t("day.title", { name: calendar.name })}
      under={t("day.under", {
        name: times.zoneName(`${date}T12:00:00Z`, zone),
        zone: zone.replaceAll("_", " "),
      })}
    >
      <div className={styles.choosing}>
        <TextInput
          type="date"
          size="md"
          label={t("day.date")}
          value={date}
          onChange={({ currentTarget: { value } }) => {
            if (isDate(value)) go({ date: value });
          }}
        />
        {calendars.data.length > 1 && (
          <NativeSelect
            size="md"
            label={t("day.of")}
            value={calendar.id}
            data={calendars.data.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={(event) => go({ calendar: event.currentTarget.value })}
          />
        )}
        <div className={styles.buttons}>
          <Button variant="default" size="md" onClick={() => go({ date: addDays(date, -1) })}>
            {t("day.before")}
          </Button>
          <Button variant="default" size="md" onClick={() => go({ date: addDays(date, 1) })}>
            {t("day.after")}
          </Button>
        </div>
      </div>
      <h2 aria-live="polite">{times.date(date)}</h2>
      <OneDay calendar={calendar} date={date} />
    </Page>
  );
};
