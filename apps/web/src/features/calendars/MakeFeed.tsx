import { Button } from "@mantine/core";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { CopyAddress } from "../../ui/CopyAddress";
import { ChoiceField, TextField } from "../../ui/Fields";
import { Notice } from "../../ui/Notice";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useAccount } from "../../entities/account/queries";
import { feedsQuery } from "../../entities/calendar/queries";
import styles from "./Calendars.module.css";

/** The person's organizations that have visits. */
const useVisited = () =>
  (useAccount()?.memberships ?? [])
    .map(({ organization }) => organization)
    .filter(({ kind }) => kind !== "operator");

const useMaking = () => {
  const queries = useQueryClient();
  const organizations = useVisited();
  const [name, setName] = useState("");
  const [organization, setOrganization] = useState(organizations[0]?.id ?? "");
  const make = useMutation({
    mutationFn: () => call("calendarFeeds.create", { body: { organization, name: name.trim() } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: feedsQuery.queryKey }),
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    make.mutate();
  };
  return { organizations, name, setName, organization, setOrganization, make, submit };
};

/** The address just made, shown this once. */
const MadeAddress = ({ path }: { readonly path: string }) => {
  const t = useText();
  return (
    <Notice kind="note" title={t("feeds.made")}>
      <CopyAddress address={new URL(path, window.location.origin).href} />
    </Notice>
  );
};

/** A private address is made under a name, for one organization. */
export const MakeFeed = () => {
  const t = useText();
  const { organizations, name, setName, organization, setOrganization, make, submit } = useMaking();
  return (
    <form className={styles.form} onSubmit={submit}>
      {make.error !== null && <ProblemNotice error={make.error} />}
      {make.data !== undefined && <MadeAddress path={make.data.path} />}
      <div className={styles.fields}>
        <TextField required label={t("feeds.name")} maxLength={200} value={name} onChange={setName} />
        {organizations.length > 1 && (
          <ChoiceField
            label={t("feeds.organization")}
            value={organization}
            data={organizations.map(({ id, name: label }) => ({ value: id, label }))}
            onChange={setOrganization}
          />
        )}
        <Button type="submit" size="md" variant="default" loading={make.isPending}>
          {t("feeds.make")}
        </Button>
      </div>
    </form>
  );
};
