import { Button, TextInput } from "@mantine/core";
import type { ShareLinkSeen } from "@evenhand/shared/http/publishing";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Line, List } from "../../ui/List";
import { Notice } from "../../ui/Notice";
import { Empty, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { CopyAddress } from "../../ui/CopyAddress";
import { addDays, instantOf, ownZone, today } from "../../entities/time/zone-time";
import styles from "./Publishing.module.css";
import { shareLinksQuery } from "./queries";

const MONTH = 30;

const MakeLink = ({ vehicle }: { readonly vehicle: string }) => {
  const t = useText();
  const queries = useQueryClient();
  const [name, setName] = useState("");
  const [until, setUntil] = useState(() => addDays(today(ownZone()), MONTH));
  const make = useMutation({
    mutationFn: () =>
      call("shareLinks.create", {
        params: { id: vehicle },
        body: { name: name.trim(), expires: instantOf(`${until}T23:59`, ownZone()) },
      }),
    onSuccess: async () => {
      setName("");
      await queries.invalidateQueries({ queryKey: ["share-links", vehicle] });
    },
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    make.mutate();
  };
  return (
    <form className={styles.form} onSubmit={submit}>
      {make.error !== null && <ProblemNotice error={make.error} />}
      {make.data !== undefined && (
        <Notice kind="note" title={t("share.made")}>
          <CopyAddress address={new URL(make.data.path, window.location.origin).href} />
        </Notice>
      )}
      <div className={styles.fields}>
        <TextInput
          size="md"
          required
          withAsterisk={false}
          maxLength={200}
          label={t("share.name")}
          value={name}
          onChange={(event) => setName(event.currentTarget.value)}
        />
        <TextInput
          size="md"
          type="date"
          required
          withAsterisk={false}
          min={today(ownZone())}
          max={addDays(today(ownZone()), 364)}
          label={t("share.expires")}
          value={until}
          onChange={(event) => setUntil(event.currentTarget.value)}
        />
        <Button type="submit" size="md" variant="default" loading={make.isPending}>
          {t("share.make")}
        </Button>
      </div>
    </form>
  );
};

/** Links for people with no account: made, counted, revoked. */
export const ShareLinks = ({ vehicle }: { readonly vehicle: string }) => {
  const t = useText();
  const intl = useIntl();
  const queries = useQueryClient();
  const links = useInfiniteQuery(shareLinksQuery(vehicle));
  const revoke = useMutation({
    mutationFn: (id: string) => call("shareLinks.revoke", { params: { id } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["share-links", vehicle] }),
  });
  const day = (instant: string): string => intl.formatDate(instant, { dateStyle: "medium" });
  const [now] = useState(() => Date.now());
  const isOver = ({ expires }: ShareLinkSeen): boolean => Date.parse(expires) <= now;
  const until = (link: ShareLinkSeen): string => {
    if (link.revokedAt !== null) return t("share.line.revoked", { when: day(link.revokedAt) });
    return t(isOver(link) ? "share.line.ended" : "share.line.until", { when: day(link.expires) });
  };
  return (
    <Panel title={t("share.title")} hint={t("share.hint")}>
      {revoke.error !== null && <ProblemNotice error={revoke.error} />}
      <List
        query={links}
        keyOf={({ id }) => id}
        renderRow={(link) => (
          <Line
            main={link.name}
            sub={`${until(link)} · ${t("share.line.reads", { count: link.reads })}`}
            end={
              link.revokedAt === null && !isOver(link) ? (
                <Button
                  variant="default"
                  size="xs"
                  aria-label={`${t("share.revoke")}: ${link.name}`}
                  loading={revoke.isPending && revoke.variables === link.id}
                  onClick={() => revoke.mutate(link.id)}
                >
                  {t("share.revoke")}
                </Button>
              ) : undefined
            }
          />
        )}
        empty={<Empty title={t("share.none")} />}
      />
      <MakeLink vehicle={vehicle} />
    </Panel>
  );
};
