import { SKILLS } from "@evenhand/shared/terms";
import { Button, Checkbox, NativeSelect, SegmentedControl, TextInput } from "@mantine/core";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useInfiniteQuery } from "@tanstack/react-query";
import { useText } from "../../strings/text";
import { oneOf } from "../../service/one-of";
import { useTimes } from "../../entities/time/use-times";
import { isDate } from "../../entities/time/is-date";
import { addDays, mondayOf } from "../../entities/time/zone-time";
import { useCarName } from "../../entities/car/CarName";
import { carsQuery } from "../../entities/car/queries";
import styles from "./Booking.module.css";
import type { HoursSearch } from "./search";

interface Props {
  readonly car: VehicleDetail;
  readonly search: HoursSearch;
  readonly from: string;
  readonly onChange: (next: Partial<HoursSearch>) => void;
}

/** Other listed cars of the same dealer, to be seen in the same visit. */
const WithCars = ({ car, search, onChange }: Omit<Props, "from">) => {
  const t = useText();
  const name = useCarName();
  const cars = useInfiniteQuery(carsQuery(undefined)).data ?? [];
  const others = cars.filter(
    ({ id, dealer, listed }) => listed && dealer.id === car.dealer.id && id !== car.id,
  );
  if (others.length === 0 || search.moving !== undefined) return null;
  return (
    <Checkbox.Group
      label={t("hours.with")}
      description={t("hours.with.hint")}
      value={search.with?.split(",") ?? []}
      onChange={(chosen) =>
        onChange({ with: chosen.length === 0 ? undefined : chosen.join(","), offer: undefined })
      }
    >
      <div className={styles.form} style={{ gap: "0.5rem", paddingTop: "0.5rem" }}>
        {others.slice(0, 5).map((other) => (
          <Checkbox key={other.id} size="md" value={other.id} label={name(other)} />
        ))}
      </div>
    </Checkbox.Group>
  );
};

const WeekSteps = ({ from, onChange }: Pick<Props, "from" | "onChange">) => {
  const t = useText();
  const times = useTimes();
  const monday = mondayOf(from);
  return (
    <div className={styles.buttons} style={{ justifyContent: "space-between" }}>
      <Button variant="default" onClick={() => onChange({ from: addDays(monday, -7), offer: undefined })}>
        {t("hours.week.before")}
      </Button>
      <h2 aria-live="polite">{t("hours.week.of", { date: times.date(monday) })}</h2>
      <Button variant="default" onClick={() => onChange({ from: addDays(monday, 7), offer: undefined })}>
        {t("hours.week.after")}
      </Button>
    </div>
  );
};

export const HoursControls = ({ car, search, from, onChange }: Props) => {
  const t = useText();
  return (
    <div className={styles.form}>
      <div className={styles.fields}>
        <TextInput
          type="date"
          size="md"
          label={t("hours.from")}
          value={from}
          onChange={({ currentTarget: { value } }) => {
            if (isDate(value)) onChange({ from: value, offer: undefined });
          }}
        />
        {search.moving === undefined && (
          <NativeSelect
            size="md"
            label={t("hours.skill")}
            value={search.skill ?? ""}
            data={[
              { value: "", label: t("hours.skill.any") },
              ...SKILLS.map((value) => ({ value, label: t(`skill.${value}`) })),
            ]}
            onChange={({ currentTarget: { value } }) =>
              onChange({ skill: oneOf(SKILLS, value), offer: undefined })
            }
          />
        )}
        <div>
          <SegmentedControl
            fullWidth
            aria-label={t("hours.view")}
            value={search.view ?? "list"}
            onChange={(next) => onChange({ view: next === "week" ? "week" : undefined })}
            data={[
              { value: "list", label: t("hours.view.list") },
              { value: "week", label: t("hours.view.week") },
            ]}
          />
        </div>
      </div>
      <WithCars car={car} search={search} onChange={onChange} />
      {search.view === "week" && <WeekSteps from={from} onChange={onChange} />}
    </div>
  );
};
