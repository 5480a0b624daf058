import { Button, Checkbox, TextInput } from "@mantine/core";
import { useText } from "../../strings/text";
import styles from "./Calendars.module.css";
import type { DayRow } from "./weekly-hours";

interface Props {
  readonly row: DayRow;
  /** Time away may last several days or come again; a further day is one day. */
  readonly away: boolean;
  readonly legend: string;
  readonly onChange: (row: DayRow) => void;
  readonly onRemove: () => void;
}

export const DayFields = ({ row, away, legend, onChange, onRemove }: Props) => {
  const t = useText();
  const several = away && !row.weekly;
  return (
    <fieldset className={styles.row}>
      <legend>{legend}</legend>
      <div className={styles.fields}>
        <TextInput
          size="md"
          type="date"
          required
          withAsterisk={false}
          label={t(several ? "hours-edit.first" : "hours-edit.date")}
          value={row.first}
          onChange={({ currentTarget: { value } }) =>
            onChange({ ...row, first: value, last: several && row.last > value ? row.last : value })
          }
        />
        {several && (
          <TextInput
            size="md"
            type="date"
            required
            withAsterisk={false}
            min={row.first}
            label={t("hours-edit.last")}
            value={row.last}
            onChange={(event) => onChange({ ...row, last: event.currentTarget.value })}
          />
        )}
        {!row.whole && (
          <>
            <TextInput
              size="md"
              type="time"
              required
              withAsterisk={false}
              label={t("hours-edit.opens")}
              value={row.opens}
              onChange={(event) => onChange({ ...row, opens: event.currentTarget.value })}
            />
            <TextInput
              size="md"
              type="time"
              required
              withAsterisk={false}
              label={t("hours-edit.closes")}
              value={row.closes === "24:00" ? "00:00" : row.closes}
              onChange={(event) => onChange({ ...row, closes: event.currentTarget.value })}
            />
          </>
        )}
        <Button variant="default" size="md" onClick={onRemove}>
          {t("hours-edit.remove")}
        </Button>
      </div>
      {away && (
        <div className={styles.weekdays}>
          <Checkbox
            size="md"
            label={t("hours-edit.whole")}
            checked={row.whole}
            onChange={(event) => onChange({ ...row, whole: event.currentTarget.checked })}
          />
          <Checkbox
            size="md"
            label={t("hours-edit.weekly")}
            checked={row.weekly}
            onChange={(event) => onChange({ ...row, weekly: event.currentTarget.checked, last: row.first })}
          />
        </div>
      )}
    </fieldset>
  );
};
