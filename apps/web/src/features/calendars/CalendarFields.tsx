import { SKILLS } from "@evenhand/shared/terms";
import { Checkbox, TextInput } from "@mantine/core";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import styles from "./Calendars.module.css";
import type { CalendarTyped } from "./calendar-form";
import { ExceptionsEditor, WeeklyEditor } from "./HoursEditor";
import { ZoneField } from "./ZoneField";

interface Props {
  readonly value: CalendarTyped;
  readonly onChange: (value: CalendarTyped) => void;
}

type TextName = Exclude<keyof CalendarTyped, "hours" | "skills" | "accepting">;

/** Everything an inspector says of their time, in panels. */
export const CalendarFields = ({ value, onChange }: Props) => {
  const t = useText();
  const field = (name: TextName, label: string, hint?: string) => (
    <TextInput
      size="md"
      inputMode={name === "name" || name === "currency" ? "text" : "decimal"}
      label={label}
      description={hint}
      value={value[name]}
      onChange={(event) => onChange({ ...value, [name]: event.currentTarget.value })}
    />
  );
  return (
    <>
      <Panel title={t("calendar.who")}>
        <div className={styles.fields}>
          {field("name", t("calendar.name"))}
          <ZoneField
            value={value.hours.zone}
            onChange={(zone) => onChange({ ...value, hours: { ...value.hours, zone } })}
          />
        </div>
        <Checkbox
          size="md"
          label={t("calendar.accepting")}
          description={t("calendar.accepting.hint")}
          checked={value.accepting}
          onChange={(event) => onChange({ ...value, accepting: event.currentTarget.checked })}
        />
      </Panel>
      <Panel title={t("hours-edit.title")} hint={t("hours-edit.hint")}>
        <WeeklyEditor value={value.hours} onChange={(hours) => onChange({ ...value, hours })} />
        <ExceptionsEditor value={value.hours} onChange={(hours) => onChange({ ...value, hours })} />
      </Panel>
      <Panel title={t("calendar.travel")} hint={t("calendar.travel.hint")}>
        <div className={styles.fields}>
          {field("latitude", t("place.latitude"), t("place.latitude.hint"))}
          {field("longitude", t("place.longitude"), t("place.longitude.hint"))}
          {field("radius", t("calendar.radius"), t("calendar.radius.hint"))}
          {field("speed", t("calendar.speed"))}
          {field("notice", t("calendar.notice"), t("calendar.notice.hint"))}
        </div>
      </Panel>
      <Panel title={t("calendar.fees")}>
        <div className={styles.fields}>
          {field("perVisit", t("calendar.per-visit"))}
          {field("perExtraCar", t("calendar.per-car"))}
          {field("perMile", t("calendar.per-mile"))}
          {field("currency", t("calendar.currency"))}
        </div>
      </Panel>
      <Panel title={t("calendar.skills")}>
        <Checkbox.Group
          aria-label={t("calendar.skills")}
          value={[...value.skills]}
          onChange={(chosen) =>
            onChange({ ...value, skills: SKILLS.filter((skill) => chosen.includes(skill)) })
          }
        >
          <div className={styles.weekdays}>
            {SKILLS.map((skill) => (
              <Checkbox key={skill} size="md" value={skill} label={t(`skill.${skill}`)} />
            ))}
          </div>
        </Checkbox.Group>
      </Panel>
    </>
  );
};
