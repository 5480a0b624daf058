import { Link, useNavigate } from "@tanstack/react-router";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { ChoiceField, TickField } from "../../ui/Fields";
import { Page, Panel } from "../../ui/Page";
import { organizationsOf, useAccount } from "../../entities/account/queries";
import styles from "../../features/calendars/Calendars.module.css";
import { firstCalendar, timeOf, type CalendarTyped } from "../../features/calendars/calendar-form";
import { CalendarFields } from "../../features/calendars/CalendarFields";
import { calendarEntry } from "../../features/calendars/entries";
import { TypedForm } from "../../features/calendars/TypedForm";
import { useNewForm } from "../../features/calendars/use-typed-form";

interface Whose {
  readonly organization: string;
  /** The inspector is the person who enters it. */
  readonly mine: boolean;
}

const useEntering = ({ organization, mine }: Whose) => {
  const account = useAccount();
  const navigate = useNavigate();
  return useNewForm(calendarEntry, {
    first: () => firstCalendar(account?.name ?? ""),
    create: (typed: CalendarTyped) => {
      const own = mine && account ? { account: account.id } : {};
      return call("calendars.create", {
        body: { organization, name: typed.name, ...own, ...timeOf(typed) },
      });
    },
    open: (id) => navigate({ to: "/calendars/$calendar", params: { calendar: id } }),
  });
};

interface WhoseProps {
  readonly value: Whose;
  readonly onChange: (value: Whose) => void;
}

const WhosePanel = ({ value, onChange }: WhoseProps) => {
  const t = useText();
  const firms = organizationsOf(useAccount(), "inspector");
  return (
    <Panel title={t("calendar.firm")}>
      <div className={styles.fields}>
        <ChoiceField
          label={t("calendar.firm")}
          value={value.organization}
          data={firms.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(organization) => onChange({ ...value, organization })}
        />
      </div>
      <TickField
        label={t("calendar.mine")}
        checked={value.mine}
        onChange={(mine) => onChange({ ...value, mine })}
      />
    </Panel>
  );
};

/** A firm's administrator enters an inspector. */
export const NewCalendar = () => {
  const t = useText();
  const firms = organizationsOf(useAccount(), "inspector");
  const [whose, setWhose] = useState<Whose>({ organization: firms[0]?.id ?? "", mine: true });
  const form = useEntering(whose);
  return (
    <Page title={t("calendar.new")} over={<Link to="/calendars">{t("nav.calendars")}</Link>}>
      <TypedForm form={form} button={t("calendar.create")}>
        <WhosePanel value={whose} onChange={setWhose} />
        <CalendarFields value={form.typed} onChange={form.change} />
      </TypedForm>
    </Page>
  );
};
