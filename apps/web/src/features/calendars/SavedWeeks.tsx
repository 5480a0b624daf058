import type { CalendarSeen } from "@evenhand/shared/http/calendars";
import type { SiteSeen } from "@evenhand/shared/http/sites";
import { keepPreviousData, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { calendarDaysQuery, siteDaysQuery } from "../../entities/calendar/queries";
import { mondayOf, today } from "../../entities/time/zone-time";
import { bandsOfInspector, bandsOfSite } from "./bands";
import { WeekPanel } from "./WeekPanel";

/** An inspector's week as it is stored. */
export const CalendarWeek = ({ calendar }: { readonly calendar: CalendarSeen }) => {
  const t = useText();
  const { zone } = calendar.hours;
  const [monday, setMonday] = useState(() => mondayOf(today(zone)));
  const days = useQuery({
    ...calendarDaysQuery(calendar.id, monday),
    placeholderData: keepPreviousData,
  });
  const toDay = (
    <LinkButton variant="default" to="/day" search={{ calendar: calendar.id }}>
      {t("nav.day")}
    </LinkButton>
  );
  return (
    <WeekPanel
      monday={monday}
      zone={zone}
      days={days}
      bandsOf={bandsOfInspector}
      onWeek={setMonday}
      actions={toDay}
    />
  );
};

/** A site's week as it is stored. */
export const SiteWeek = ({ site }: { readonly site: SiteSeen }) => {
  const { zone } = site.hours;
  const [monday, setMonday] = useState(() => mondayOf(today(zone)));
  const days = useQuery({ ...siteDaysQuery(site.id, monday), placeholderData: keepPreviousData });
  return <WeekPanel monday={monday} zone={zone} days={days} bandsOf={bandsOfSite} onWeek={setMonday} />;
};
