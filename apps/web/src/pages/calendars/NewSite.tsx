import { Button, NativeSelect } from "@mantine/core";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate } from "@tanstack/react-router";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { organizationsOf, useAccount } from "../../entities/account/queries";
import styles from "../../features/calendars/Calendars.module.css";
import { firstSite, siteOf, wrongSiteFields } from "../../features/calendars/site-form";
import { SiteFields } from "../../features/calendars/SiteFields";
import { TrialWeek } from "../../features/calendars/TrialWeek";
import { useSiteFieldNames } from "../../features/calendars/use-site-field-names";
import { hoursOf } from "../../features/calendars/weekly-hours";
import { WrongFields } from "../../features/calendars/WrongFields";

/** A dealer enters a site. */
export const NewSite = () => {
  const t = useText();
  const queries = useQueryClient();
  const navigate = useNavigate();
  const names = useSiteFieldNames();
  const firms = organizationsOf(useAccount(), "dealer");
  const [organization, setOrganization] = useState(firms[0]?.id ?? "");
  const [typed, setTyped] = useState(firstSite);
  const [tried, setTried] = useState(false);
  const wrong = wrongSiteFields(typed);
  const create = useMutation({
    mutationFn: () =>
      call("sites.create", {
        body: { organization, ...siteOf(typed), bays: typed.bays.map(({ name }) => name) },
      }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: ["sites"] });
      await navigate({ to: "/sites/$site", params: { site: id } });
    },
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    setTried(true);
    if (wrong.length === 0) create.mutate();
  };
  return (
    <Page title={t("site.new")} over={<Link to="/sites">{t("nav.sites")}</Link>}>
      <form className={styles.columns} onSubmit={submit}>
        <div className={styles.stack}>
          {firms.length > 1 && (
            <NativeSelect
              size="md"
              label={t("site.dealer")}
              value={organization}
              data={firms.map(({ id, name }) => ({ value: id, label: name }))}
              onChange={(event) => setOrganization(event.currentTarget.value)}
            />
          )}
          <SiteFields value={typed} onChange={setTyped} />
          {tried && <WrongFields names={names(wrong)} />}
          {create.error !== null && <ProblemNotice error={create.error} />}
          <div>
            <Button type="submit" size="md" loading={create.isPending}>
              {t("site.create")}
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
