import { Button, Checkbox } from "@mantine/core";
import { useText } from "../../strings/text";
import styles from "./Calendars.module.css";
import { TimesFields } from "./TimesFields";
import { weekdays, type WeeklyRow } from "./weekly-hours";

interface RowProps {
  readonly row: WeeklyRow;
  readonly onChange: (row: WeeklyRow) => void;
}

const Weekdays = ({ row, onChange }: RowProps) => {
  const t = useText();
  return (
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
  );
};

interface Props extends RowProps {
  readonly number: number;
  readonly onRemove: () => void;
}

/** Hours that come again every week: on which days, from when until when. */
export const WeeklyFields = ({ row, number, onChange, onRemove }: Props) => {
  const t = useText();
  return (
    <fieldset className={styles.row}>
      <legend>{t("hours-edit.group", { number })}</legend>
      <Weekdays row={row} onChange={onChange} />
      <div className={styles.fields}>
        <TimesFields value={row} onChange={(change) => onChange({ ...row, ...change })} />
        <Button variant="default" size="md" onClick={onRemove}>
          {t("hours-edit.remove")}
        </Button>
      </div>
    </fieldset>
  );
};
