import { Button } from "@mantine/core";
import { useText } from "../../strings/text";
import { TextField, TickField } from "../../ui/Fields";
import styles from "./Calendars.module.css";
import { TimesFields } from "./TimesFields";
import { beginningOn, comingAgain, type DayRow } from "./weekly-hours";

interface RowProps {
  readonly row: DayRow;
  readonly onChange: (row: DayRow) => void;
}

interface Props extends RowProps {
  /** Time away may last several days or come again; a further day is one day. */
  readonly away: boolean;
  readonly legend: string;
  readonly onRemove: () => void;
}

const Dates = ({ row, several, onChange }: RowProps & { readonly several: boolean }) => {
  const t = useText();
  return (
    <>
      <TextField
        type="date"
        required
        label={t(several ? "hours-edit.first" : "hours-edit.date")}
        value={row.first}
        onChange={(first) => onChange(beginningOn(row, first, several))}
      />
      {several && (
        <TextField
          type="date"
          required
          min={row.first}
          label={t("hours-edit.last")}
          value={row.last}
          onChange={(last) => onChange({ ...row, last })}
        />
      )}
    </>
  );
};

const AwayTicks = ({ row, onChange }: RowProps) => {
  const t = useText();
  return (
    <div className={styles.weekdays}>
      <TickField
        label={t("hours-edit.whole")}
        checked={row.whole}
        onChange={(whole) => onChange({ ...row, whole })}
      />
      <TickField
        label={t("hours-edit.weekly")}
        checked={row.weekly}
        onChange={(weekly) => onChange(comingAgain(row, weekly))}
      />
    </div>
  );
};

/** A day or some days in a row, whole or from an hour to an hour. */
export const DayFields = ({ row, away, legend, onChange, onRemove }: Props) => {
  const t = useText();
  return (
    <fieldset className={styles.row}>
      <legend>{legend}</legend>
      <div className={styles.fields}>
        <Dates row={row} several={away && !row.weekly} onChange={onChange} />
        {!row.whole && (
          <TimesFields value={row} required onChange={(change) => onChange({ ...row, ...change })} />
        )}
        <Button variant="default" size="md" onClick={onRemove}>
          {t("hours-edit.remove")}
        </Button>
      </div>
      {away && <AwayTicks row={row} onChange={onChange} />}
    </fieldset>
  );
};
