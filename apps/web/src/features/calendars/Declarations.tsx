import { Button, NativeSelect } from "@mantine/core";
import type { CalendarSeen } from "@evenhand/shared/http/calendars";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { Empty, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { DealingFields, InterestFields } from "../../entities/declaration/DeclarationFields";
import { interestBody, newInterest, type DealingTyped } from "../../entities/declaration/declarations";
import { useCarName } from "../../entities/car/CarName";
import { carsQuery } from "../../entities/car/queries";
import styles from "./Calendars.module.css";

interface Props {
  readonly calendar: CalendarSeen;
}

const useDone = () => {
  const queries = useQueryClient();
  return (): Promise<void> => queries.invalidateQueries();
};

const InterestLines = ({ calendar }: Props) => {
  const t = useText();
  const intl = useIntl();
  const done = useDone();
  const end = useMutation({
    mutationFn: (id: string) =>
      call("interests.end", { params: { id }, body: { endedAt: new Date().toISOString() } }),
    onSuccess: done,
  });
  const day = (instant: string): string => intl.formatDate(instant, { dateStyle: "medium" });
  if (calendar.interests.length === 0) return <Empty title={t("interests.none")} />;
  return (
    <>
      {end.error !== null && <ProblemNotice error={end.error} />}
      <ul className={styles.plain}>
        {calendar.interests.map((one) => (
          <li key={one.id}>
            <Line
              main={t("interests.line", {
                kind: t(`interest.${one.kind}`),
                dealer: one.dealerName,
                holder: t(`beholden.holder.${one.holder}`),
              })}
              sub={[
                one.endedAt === null
                  ? t("interests.since", { since: day(one.since) })
                  : t("interests.ended", { since: day(one.since), ended: day(one.endedAt) }),
                one.note,
              ]
                .filter((part) => part !== "")
                .join(" · ")}
              end={
                one.endedAt === null ? (
                  <Button variant="default" size="xs" onClick={() => end.mutate(one.id)}>
                    {t("interests.end")}
                  </Button>
                ) : undefined
              }
            />
          </li>
        ))}
      </ul>
    </>
  );
};

const DeclareInterest = ({ calendar }: Props) => {
  const t = useText();
  const done = useDone();
  const { zone } = calendar.hours;
  const cars = useInfiniteQuery(carsQuery(undefined)).data ?? [];
  const dealers = [...new Map(cars.map(({ dealer }) => [dealer.id, dealer])).values()];
  const [chosen, setChosen] = useState("");
  const [typed, setTyped] = useState(() => newInterest(0, zone));
  const dealer = chosen === "" ? (dealers[0]?.id ?? "") : chosen;
  const declare = useMutation({
    mutationFn: () =>
      call("interests.declare", {
        params: { id: calendar.id },
        body: { ...interestBody(typed, zone), dealer },
      }),
    onSuccess: done,
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    declare.mutate();
  };
  if (dealers.length === 0) return <p className={styles.hint}>{t("interests.no-dealer")}</p>;
  return (
    <form className={styles.form} onSubmit={submit}>
      {declare.error !== null && <ProblemNotice error={declare.error} />}
      <NativeSelect
        size="md"
        label={t("interests.dealer")}
        value={dealer}
        data={dealers.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={(event) => setChosen(event.currentTarget.value)}
      />
      <InterestFields value={typed} onChange={setTyped} />
      <div>
        <Button type="submit" variant="default" loading={declare.isPending}>
          {t("interests.declare")}
        </Button>
      </div>
    </form>
  );
};

const Dealings = ({ calendar }: Props) => {
  const t = useText();
  const name = useCarName();
  const done = useDone();
  const cars = useInfiniteQuery(carsQuery(undefined)).data ?? [];
  const [typed, setTyped] = useState<DealingTyped>({ key: 0, vehicle: "", dealing: "repaired", note: "" });
  const vehicle = typed.vehicle === "" ? (cars[0]?.id ?? "") : typed.vehicle;
  const declare = useMutation({
    mutationFn: () =>
      call("dealings.declare", {
        params: { id: calendar.id },
        body: { vehicle, dealing: typed.dealing, note: typed.note },
      }),
    onSuccess: done,
  });
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    declare.mutate();
  };
  const nameOf = (id: string): string => {
    const car = cars.find((one) => one.id === id);
    return car ? name(car) : id;
  };
  return (
    <Panel title={t("dealings.title")} hint={t("dealings.hint")}>
      {calendar.dealings.length === 0 ? (
        <Empty title={t("dealings.none")} />
      ) : (
        <ul className={styles.plain}>
          {calendar.dealings.map((one) => (
            <li key={one.id}>
              <Line
                main={nameOf(one.vehicle)}
                sub={[t(`dealing.${one.dealing}`), one.note].filter((part) => part !== "").join(" · ")}
              />
            </li>
          ))}
        </ul>
      )}
      {declare.error !== null && <ProblemNotice error={declare.error} />}
      {cars.length === 0 ? (
        <p className={styles.hint}>{t("dealings.no-car")}</p>
      ) : (
        <form className={styles.form} onSubmit={submit}>
          <DealingFields
            value={{ ...typed, vehicle }}
            cars={cars.map((car) => ({ id: car.id, name: name(car) }))}
            onChange={setTyped}
          />
          <div>
            <Button type="submit" variant="default" loading={declare.isPending}>
              {t("dealings.declare")}
            </Button>
          </div>
        </form>
      )}
    </Panel>
  );
};

/** What ties an inspector or the firm to dealers and cars. */
export const Declarations = ({ calendar }: Props) => {
  const t = useText();
  return (
    <>
      <Panel title={t("interests.title")} hint={t("interests.hint")}>
        <InterestLines calendar={calendar} />
        <DeclareInterest calendar={calendar} />
      </Panel>
      <Dealings calendar={calendar} />
    </>
  );
};
