import { Button, Checkbox, NativeSelect } from "@mantine/core";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate } from "@tanstack/react-router";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { organizationsOf, useAccount } from "../../entities/account/queries";
import styles from "../../features/calendars/Calendars.module.css";
import { firstCalendar, timeOf, wrongFields } from "../../features/calendars/calendar-form";
import { CalendarFields } from "../../features/calendars/CalendarFields";
import { TrialWeek } from "../../features/calendars/TrialWeek";
import { useFieldNames } from "../../features/calendars/use-field-names";
import { hoursOf } from "../../features/calendars/weekly-hours";
import { WrongFields } from "../../features/calendars/WrongFields";

/** A firm's administrator enters an inspector. */
export const NewCalendar = () => {
  const t = useText();
  const account = useAccount();
  const queries = useQueryClient();
  const navigate = useNavigate();
  const fieldNames = useFieldNames();
  const firms = organizationsOf(account, "inspector");
  const [organization, setOrganization] = useState(firms[0]?.id ?? "");
  const [typed, setTyped] = useState(() => firstCalendar(account?.name ?? ""));
  const [mine, setMine] = useState(true);
  const [tried, setTried] = useState(false);
  const wrong = wrongFields(typed);
  const create = useMutation({
    mutationFn: () =>
      call("calendars.create", {
        body: {
          organization,
          name: typed.name,
          ...(mine && account ? { account: account.id } : {}),
          ...timeOf(typed),
        },
      }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: ["calendars"] });
      await navigate({ to: "/calendars/$calendar", params: { calendar: id } });
    },
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    setTried(true);
    if (wrong.length === 0) create.mutate();
  };
  return (
    <Page title={t("calendar.new")} over={<Link to="/calendars">{t("nav.calendars")}</Link>}>
      <form className={styles.columns} onSubmit={submit}>
        <div className={styles.stack}>
          <Panel title={t("calendar.firm")}>
            <div className={styles.fields}>
              <NativeSelect
                size="md"
                label={t("calendar.firm")}
                value={organization}
                data={firms.map(({ id, name }) => ({ value: id, label: name }))}
                onChange={(event) => setOrganization(event.currentTarget.value)}
              />
            </div>
            <Checkbox
              size="md"
              label={t("calendar.mine")}
              checked={mine}
              onChange={(event) => setMine(event.currentTarget.checked)}
            />
          </Panel>
          <CalendarFields value={typed} onChange={setTyped} />
          {tried && <WrongFields names={fieldNames(wrong)} />}
          {create.error !== null && <ProblemNotice error={create.error} />}
          <div>
            <Button type="submit" size="md" loading={create.isPending}>
              {t("calendar.create")}
            </Button>
          </div>
        </div>
        <div className={styles.side}>
          <TrialWeek hours={hoursOf(typed.hours)} />
        </div>
      </form>
    </Page>
  );
};
