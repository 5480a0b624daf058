import type { CalendarSeen } from "@evenhand/shared/http/calendars";
import { useInfiniteQuery, useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { Empty, Panel } from "../../ui/Page";
import { DealingFields } from "../../entities/declaration/DeclarationFields";
import type { DealingTyped } from "../../entities/declaration/declarations";
import { useCarName } from "../../entities/car/CarName";
import { carsQuery } from "../../entities/car/queries";
import styles from "./Calendars.module.css";
import { DeclareForm } from "./DeclareForm";

interface Props {
  readonly calendar: CalendarSeen;
}

/** The cars that can be seen, each with the name it goes by. */
const useNamedCars = () => {
  const name = useCarName();
  const cars = useInfiniteQuery(carsQuery(undefined)).data ?? [];
  return cars.map((car) => ({ id: car.id, name: name(car) }));
};

const DealingLines = ({ calendar: { dealings } }: Props) => {
  const t = useText();
  const cars = useNamedCars();
  if (dealings.length === 0) return <Empty title={t("dealings.none")} />;
  return (
    <ul className={styles.plain}>
      {dealings.map((one) => (
        <li key={one.id}>
          <Line
            main={cars.find(({ id }) => id === one.vehicle)?.name ?? one.vehicle}
            sub={[t(`dealing.${one.dealing}`), one.note].filter((part) => part !== "").join(" · ")}
          />
        </li>
      ))}
    </ul>
  );
};

const DeclareDealing = ({ calendar }: Props) => {
  const t = useText();
  const queries = useQueryClient();
  const cars = useNamedCars();
  const [typed, setTyped] = useState<DealingTyped>({ key: 0, vehicle: "", dealing: "repaired", note: "" });
  const vehicle = typed.vehicle === "" ? (cars[0]?.id ?? "") : typed.vehicle;
  const declaring = useMutation({
    mutationFn: () =>
      call("dealings.declare", {
        params: { id: calendar.id },
        body: { vehicle, dealing: typed.dealing, note: typed.note },
      }),
    onSuccess: () => queries.invalidateQueries(),
  });
  if (cars.length === 0) return <p className={styles.hint}>{t("dealings.no-car")}</p>;
  return (
    <DeclareForm declaring={declaring} button={t("dealings.declare")}>
      <DealingFields value={{ ...typed, vehicle }} cars={cars} onChange={setTyped} />
    </DeclareForm>
  );
};

/** What somebody of the firm once had to do with a car. */
export const Dealings = ({ calendar }: Props) => {
  const t = useText();
  return (
    <Panel title={t("dealings.title")} hint={t("dealings.hint")}>
      <DealingLines calendar={calendar} />
      <DeclareDealing calendar={calendar} />
    </Panel>
  );
};
