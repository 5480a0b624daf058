import { Button, Checkbox, TextInput } from "@mantine/core";
import type { HoursRule } from "@evenhand/shared/booking";
import { useText } from "../../strings/text";
import { DayFields } from "./DayFields";
import styles from "./Calendars.module.css";
import { newDay, newWeekly, weekdays, type HoursTyped, type WeeklyRow } from "./weekly-hours";

interface Props {
  readonly value: HoursTyped;
  readonly onChange: (value: HoursTyped) => void;
}

const replaced = <T extends { readonly key: string }>(rows: readonly T[], one: T): readonly T[] =>
  rows.map((other) => (other.key === one.key ? one : other));
const without = <T extends { readonly key: string }>(rows: readonly T[], key: string): readonly T[] =>
  rows.filter((other) => other.key !== key);

const WeeklyFields = ({
  row,
  number,
  onChange,
  onRemove,
}: {
  readonly row: WeeklyRow;
  readonly number: number;
  readonly onChange: (row: WeeklyRow) => void;
  readonly onRemove: () => void;
}) => {
  const t = useText();
  return (
    <fieldset className={styles.row}>
      <legend>{t("hours-edit.group", { number })}</legend>
      <Checkbox.Group
        label={t("hours-edit.days")}
        value={[...row.days]}
        onChange={(chosen) => onChange({ ...row, days: weekdays.filter((day) => chosen.includes(day)) })}
      >
        <div className={styles.weekdays}>
          {weekdays.map((day) => (
            <Checkbox key={day} size="md" value={day} label={t(`weekday.${day}`)} />
          ))}
        </div>
      </Checkbox.Group>
      <div className={styles.fields}>
        <TextInput
          size="md"
          type="time"
          label={t("hours-edit.opens")}
          value={row.opens}
          onChange={(event) => onChange({ ...row, opens: event.currentTarget.value })}
        />
        <TextInput
          size="md"
          type="time"
          label={t("hours-edit.closes")}
          value={row.closes === "24:00" ? "00:00" : row.closes}
          onChange={(event) => onChange({ ...row, closes: event.currentTarget.value })}
        />
        <Button variant="default" size="md" onClick={onRemove}>
          {t("hours-edit.remove")}
        </Button>
      </div>
    </fieldset>
  );
};

/** Rules another program entered: shown as they are, to be kept or taken out. */
const OtherRules = ({
  rules,
  onChange,
}: {
  readonly rules: readonly HoursRule[];
  readonly onChange: (rules: readonly HoursRule[]) => void;
}) => {
  const t = useText();
  if (rules.length === 0) return null;
  return (
    <div className={styles.part}>
      <h3>{t("hours-edit.other")}</h3>
      <ul className={styles.plain}>
        {rules.map((rule) => (
          <li key={`${rule.opens}${rule.rrule ?? ""}`} className={styles.other}>
            <span>
              {t("hours-edit.other.line", {
                opens: rule.opens.replace("T", " ").slice(0, 16),
                closes: rule.closes,
                rule: rule.rrule ?? t("hours-edit.other.once"),
              })}
            </span>
            <Button variant="default" size="xs" onClick={() => onChange(rules.filter((one) => one !== rule))}>
              {t("hours-edit.remove")}
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
};

export const WeeklyEditor = ({ value, onChange }: Props) => {
  const t = useText();
  return (
    <div className={styles.form}>
      {value.weekly.length === 0 && <p>{t("hours-edit.none")}</p>}
      {value.weekly.map((row, index) => (
        <WeeklyFields
          key={row.key}
          row={row}
          number={index + 1}
          onChange={(next) => onChange({ ...value, weekly: replaced(value.weekly, next) })}
          onRemove={() => onChange({ ...value, weekly: without(value.weekly, row.key) })}
        />
      ))}
      <div>
        <Button
          variant="default"
          onClick={() => onChange({ ...value, weekly: [...value.weekly, newWeekly(value.zone)] })}
        >
          {t("hours-edit.add")}
        </Button>
      </div>
      <OtherRules rules={value.otherOpen} onChange={(otherOpen) => onChange({ ...value, otherOpen })} />
    </div>
  );
};

/** Single further days, and everything that takes hours away. */
export const ExceptionsEditor = ({ value, onChange }: Props) => {
  const t = useText();
  return (
    <div className={styles.form}>
      {(["away", "extra"] as const).map((part) => (
        <div key={part} className={styles.part}>
          <h3>{t(`hours-edit.${part}`)}</h3>
          <p className={styles.hint}>{t(`hours-edit.${part}.hint`)}</p>
          {value[part].map((row, index) => (
            <DayFields
              key={row.key}
              row={row}
              away={part === "away"}
              legend={t(`hours-edit.${part}.group`, { number: index + 1 })}
              onChange={(next) => onChange({ ...value, [part]: replaced(value[part], next) })}
              onRemove={() => onChange({ ...value, [part]: without(value[part], row.key) })}
            />
          ))}
          <div>
            <Button
              variant="default"
              onClick={() =>
                onChange({ ...value, [part]: [...value[part], newDay(value.zone, part === "away")] })
              }
            >
              {t(`hours-edit.${part}.add`)}
            </Button>
          </div>
        </div>
      ))}
      <OtherRules rules={value.otherAway} onChange={(otherAway) => onChange({ ...value, otherAway })} />
    </div>
  );
};
