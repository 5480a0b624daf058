import type { CalendarSeen } from "@evenhand/shared/http/calendars";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page, Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { CalendarFields } from "../../features/calendars/CalendarFields";
import { Dealings } from "../../features/calendars/Dealings";
import { calendarEntry } from "../../features/calendars/entries";
import { Interests } from "../../features/calendars/Interests";
import { CalendarWeek } from "../../features/calendars/SavedWeeks";
import { TypedForm } from "../../features/calendars/TypedForm";
import { useStoredForm } from "../../features/calendars/use-typed-form";
import { calendarQuery } from "../../entities/calendar/queries";

const route = getRouteApi("/signed-in/calendars/$calendar");

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
  const form = useStoredForm(calendar, calendarEntry);
  const declared = (
    <>
      <Interests calendar={calendar} />
      <Dealings calendar={calendar} />
    </>
  );
  return (
    <TypedForm
      form={form}
      button={t("calendar.save")}
      stored={<CalendarWeek calendar={calendar} />}
      below={declared}
    >
      <CalendarFields value={form.typed} onChange={form.change} />
    </TypedForm>
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
