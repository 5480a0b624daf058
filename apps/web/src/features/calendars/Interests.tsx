import { Button } from "@mantine/core";
import type { CalendarSeen } from "@evenhand/shared/http/calendars";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { ChoiceField } from "../../ui/Fields";
import { Line } from "../../ui/List";
import { Empty, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { InterestFields } from "../../entities/declaration/DeclarationFields";
import { interestBody, newInterest } from "../../entities/declaration/declarations";
import { carsQuery } from "../../entities/car/queries";
import styles from "./Calendars.module.css";
import { DeclareForm } from "./DeclareForm";

interface Props {
  readonly calendar: CalendarSeen;
}

type Interest = CalendarSeen["interests"][number];

const useSpan = (): ((interest: Interest) => string) => {
  const t = useText();
  const intl = useIntl();
  const day = (instant: string): string => intl.formatDate(instant, { dateStyle: "medium" });
  return ({ since, endedAt }) =>
    endedAt === null
      ? t("interests.since", { since: day(since) })
      : t("interests.ended", { since: day(since), ended: day(endedAt) });
};

const InterestLine = ({ one, onEnd }: { readonly one: Interest; readonly onEnd: () => void }) => {
  const t = useText();
  const span = useSpan();
  const main = t("interests.line", {
    kind: t(`interest.${one.kind}`),
    dealer: one.dealerName,
    holder: t(`beholden.holder.${one.holder}`),
  });
  const end = (
    <Button variant="default" size="xs" onClick={onEnd}>
      {t("interests.end")}
    </Button>
  );
  return (
    <Line
      main={main}
      sub={[span(one), one.note].filter((part) => part !== "").join(" · ")}
      end={one.endedAt === null ? end : undefined}
    />
  );
};

const InterestLines = ({ calendar }: Props) => {
  const t = useText();
  const queries = useQueryClient();
  const end = useMutation({
    mutationFn: (id: string) =>
      call("interests.end", { params: { id }, body: { endedAt: new Date().toISOString() } }),
    onSuccess: () => queries.invalidateQueries(),
  });
  if (calendar.interests.length === 0) return <Empty title={t("interests.none")} />;
  return (
    <>
      {end.error !== null && <ProblemNotice error={end.error} />}
      <ul className={styles.plain}>
        {calendar.interests.map((one) => (
          <li key={one.id}>
            <InterestLine one={one} onEnd={() => end.mutate(one.id)} />
          </li>
        ))}
      </ul>
    </>
  );
};

/** The dealers of the cars that can be seen. */
const useDealers = () => {
  const cars = useInfiniteQuery(carsQuery(undefined)).data ?? [];
  return [...new Map(cars.map(({ dealer }) => [dealer.id, dealer])).values()];
};

const useDeclaring = (calendar: CalendarSeen) => {
  const queries = useQueryClient();
  const { zone } = calendar.hours;
  const dealers = useDealers();
  const [chosen, choose] = useState("");
  const [typed, setTyped] = useState(() => newInterest(0, zone));
  const dealer = chosen === "" ? (dealers[0]?.id ?? "") : chosen;
  const declaring = useMutation({
    mutationFn: () =>
      call("interests.declare", {
        params: { id: calendar.id },
        body: { ...interestBody(typed, zone), dealer },
      }),
    onSuccess: () => queries.invalidateQueries(),
  });
  return { dealers, dealer, choose, typed, setTyped, declaring };
};

const DeclareInterest = ({ calendar }: Props) => {
  const t = useText();
  const { dealers, dealer, choose, typed, setTyped, declaring } = useDeclaring(calendar);
  if (dealers.length === 0) return <p className={styles.hint}>{t("interests.no-dealer")}</p>;
  return (
    <DeclareForm declaring={declaring} button={t("interests.declare")}>
      <ChoiceField
        label={t("interests.dealer")}
        value={dealer}
        data={dealers.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={choose}
      />
      <InterestFields value={typed} onChange={setTyped} />
    </DeclareForm>
  );
};

/** What ties an inspector or the firm to dealers. */
export const Interests = ({ calendar }: Props) => {
  const t = useText();
  return (
    <Panel title={t("interests.title")} hint={t("interests.hint")}>
      <InterestLines calendar={calendar} />
      <DeclareInterest calendar={calendar} />
    </Panel>
  );
};
