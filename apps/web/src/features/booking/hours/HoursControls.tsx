import { SKILLS } from "@evenhand/shared/terms";
import { Button, Checkbox, SegmentedControl } from "@mantine/core";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useInfiniteQuery } from "@tanstack/react-query";
import { useText } from "../../../strings/text";
import { ChoiceField, TextField } from "../../../ui/Fields";
import { useTimes } from "../../../entities/time/use-times";
import { useCarName } from "../../../entities/car/CarName";
import { carsQuery } from "../../../entities/car/queries";
import styles from "../Booking.module.css";
import type { HoursSearch } from "../search";
import { mondayBeside, otherCars, type HoursChoice } from "./hours-choice";

interface Props {
  readonly car: VehicleDetail;
  readonly search: HoursSearch;
  /** Where what is shown begins. */
  readonly day: string;
  readonly choose: (choice: HoursChoice) => void;
}

/** Other listed cars of the same dealer, to be seen in the same visit. */
const WithCars = ({ car, search, choose }: Omit<Props, "day">) => {
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
      value={[...otherCars(search)]}
      onChange={(chosen) => choose({ choose: "cars", cars: chosen })}
    >
      <div className={styles.form} style={{ gap: "0.5rem", paddingTop: "0.5rem" }}>
        {others.slice(0, 5).map((other) => (
          <Checkbox key={other.id} size="md" value={other.id} label={name(other)} />
        ))}
      </div>
    </Checkbox.Group>
  );
};

const WeekSteps = ({ day, choose }: Pick<Props, "day" | "choose">) => {
  const t = useText();
  const times = useTimes();
  const toWeek = (weeks: number): void => choose({ choose: "day", day: mondayBeside(day, weeks) });
  return (
    <div className={styles.buttons} style={{ justifyContent: "space-between" }}>
      <Button variant="default" onClick={() => toWeek(-1)}>
        {t("hours.week.before")}
      </Button>
      <h2 aria-live="polite">{t("hours.week.of", { date: times.date(mondayBeside(day, 0)) })}</h2>
      <Button variant="default" onClick={() => toWeek(1)}>
        {t("hours.week.after")}
      </Button>
    </div>
  );
};

const SkillChoice = ({ search, choose }: Pick<Props, "search" | "choose">) => {
  const t = useText();
  return (
    <ChoiceField
      label={t("hours.skill")}
      value={search.skill ?? ""}
      data={[
        { value: "", label: t("hours.skill.any") },
        ...SKILLS.map((value) => ({ value, label: t(`skill.${value}`) })),
      ]}
      onChange={(skill) => choose({ choose: "skill", skill })}
    />
  );
};

const ViewChoice = ({ search, choose }: Pick<Props, "search" | "choose">) => {
  const t = useText();
  return (
    <div>
      <SegmentedControl
        fullWidth
        aria-label={t("hours.view")}
        value={search.view ?? "list"}
        onChange={(view) => choose({ choose: "view", view })}
        data={[
          { value: "list", label: t("hours.view.list") },
          { value: "week", label: t("hours.view.week") },
        ]}
      />
    </div>
  );
};

/** What is looked for: from which day, with which skill and cars, as a list or a week. */
export const HoursControls = ({ car, search, day, choose }: Props) => {
  const t = useText();
  return (
    <div className={styles.form}>
      <div className={styles.fields}>
        <TextField
          type="date"
          label={t("hours.from")}
          value={day}
          onChange={(typed) => choose({ choose: "day", day: typed })}
        />
        {search.moving === undefined && <SkillChoice search={search} choose={choose} />}
        <ViewChoice search={search} choose={choose} />
      </div>
      <WithCars car={car} search={search} choose={choose} />
      {search.view === "week" && <WeekSteps day={day} choose={choose} />}
    </div>
  );
};
