import { Button } from "@mantine/core";
import { replaced, without } from "../../service/rows";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { DayFields } from "./DayFields";
import styles from "./Calendars.module.css";
import { OtherRules } from "./OtherRules";
import { newDay, newWeekly, type HoursTyped } from "./weekly-hours";
import { WeeklyFields } from "./WeeklyFields";

interface Props {
  readonly value: HoursTyped;
  readonly onChange: (value: HoursTyped) => void;
}

const Weekly = ({ value, onChange }: Props) => {
  const t = useText();
  const { weekly } = value;
  return (
    <div className={styles.form}>
      {weekly.length === 0 && <p>{t("hours-edit.none")}</p>}
      {weekly.map((row, index) => (
        <WeeklyFields
          key={row.key}
          row={row}
          number={index + 1}
          onChange={(next) => onChange({ ...value, weekly: replaced(weekly, next) })}
          onRemove={() => onChange({ ...value, weekly: without(weekly, row.key) })}
        />
      ))}
      <div>
        <Button
          variant="default"
          onClick={() => onChange({ ...value, weekly: [...weekly, newWeekly(value.zone)] })}
        >
          {t("hours-edit.add")}
        </Button>
      </div>
      <OtherRules rules={value.otherOpen} onChange={(otherOpen) => onChange({ ...value, otherOpen })} />
    </div>
  );
};

const Days = ({ part, value, onChange }: Props & { readonly part: "away" | "extra" }) => {
  const t = useText();
  const rows = value[part];
  const set = (next: HoursTyped["away"]): void => onChange({ ...value, [part]: next });
  return (
    <div className={styles.part}>
      <h3>{t(`hours-edit.${part}`)}</h3>
      <p className={styles.hint}>{t(`hours-edit.${part}.hint`)}</p>
      {rows.map((row, index) => (
        <DayFields
          key={row.key}
          row={row}
          away={part === "away"}
          legend={t(`hours-edit.${part}.group`, { number: index + 1 })}
          onChange={(next) => set(replaced(rows, next))}
          onRemove={() => set(without(rows, row.key))}
        />
      ))}
      <div>
        <Button variant="default" onClick={() => set([...rows, newDay(value.zone, part === "away")])}>
          {t(`hours-edit.${part}.add`)}
        </Button>
      </div>
    </div>
  );
};

/** Single further days, and everything that takes hours away. */
const Exceptions = ({ value, onChange }: Props) => (
  <div className={styles.form}>
    <Days part="away" value={value} onChange={onChange} />
    <Days part="extra" value={value} onChange={onChange} />
    <OtherRules rules={value.otherAway} onChange={(otherAway) => onChange({ ...value, otherAway })} />
  </div>
);

interface PanelProps extends Props {
  readonly title: string;
  readonly hint?: string;
}

/** The hours of an inspector or of a site: week by week, and what differs from that. */
export const HoursEditor = ({ title, hint, value, onChange }: PanelProps) => (
  <Panel title={title} hint={hint}>
    <Weekly value={value} onChange={onChange} />
    <Exceptions value={value} onChange={onChange} />
  </Panel>
);
