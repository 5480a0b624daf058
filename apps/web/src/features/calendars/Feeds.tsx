import { Button, NativeSelect, TextInput } from "@mantine/core";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Line, List } from "../../ui/List";
import { Notice } from "../../ui/Notice";
import { Empty, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useAccount } from "../../entities/account/queries";
import styles from "./Calendars.module.css";
import { CopyAddress } from "../../ui/CopyAddress";
import { feedsQuery } from "../../entities/calendar/queries";

const MakeFeed = () => {
  const t = useText();
  const queries = useQueryClient();
  const account = useAccount();
  const organizations =
    account?.memberships.map(({ organization }) => organization).filter(({ kind }) => kind !== "operator") ??
    [];
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
  return (
    <form className={styles.form} onSubmit={submit}>
      {make.error !== null && <ProblemNotice error={make.error} />}
      {make.data !== undefined && (
        <Notice kind="note" title={t("feeds.made")}>
          <CopyAddress address={new URL(make.data.path, window.location.origin).href} />
        </Notice>
      )}
      <div className={styles.fields}>
        <TextInput
          size="md"
          required
          withAsterisk={false}
          label={t("feeds.name")}
          maxLength={200}
          value={name}
          onChange={(event) => setName(event.currentTarget.value)}
        />
        {organizations.length > 1 && (
          <NativeSelect
            size="md"
            label={t("feeds.organization")}
            value={organization}
            data={organizations.map(({ id, name: label }) => ({ value: id, label }))}
            onChange={(event) => setOrganization(event.currentTarget.value)}
          />
        )}
        <Button type="submit" size="md" variant="default" loading={make.isPending}>
          {t("feeds.make")}
        </Button>
      </div>
    </form>
  );
};

/** Private addresses from which calendar programs read the person's visits. */
export const FeedsPanel = () => {
  const t = useText();
  const intl = useIntl();
  const queries = useQueryClient();
  const feeds = useInfiniteQuery(feedsQuery);
  const revoke = useMutation({
    mutationFn: (id: string) => call("calendarFeeds.revoke", { params: { id } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: feedsQuery.queryKey }),
  });
  return (
    <Panel title={t("feeds.title")} hint={t("feeds.hint")}>
      {revoke.error !== null && <ProblemNotice error={revoke.error} />}
      <List
        query={feeds}
        keyOf={({ id }) => id}
        renderRow={({ id, name, organization, readAt }) => (
          <Line
            main={name}
            sub={`${organization.name} · ${
              readAt === null
                ? t("feeds.not-read")
                : t("feeds.read", {
                    when: intl.formatDate(readAt, { dateStyle: "medium", timeStyle: "short" }),
                  })
            }`}
            end={
              <Button
                variant="default"
                size="xs"
                aria-label={`${t("feeds.revoke")}: ${name}`}
                loading={revoke.isPending && revoke.variables === id}
                onClick={() => revoke.mutate(id)}
              >
                {t("feeds.revoke")}
              </Button>
            }
          />
        )}
        empty={<Empty title={t("feeds.none")} />}
      />
      <MakeFeed />
    </Panel>
  );
};
