import { SKILLS } from "@evenhand/shared/terms";
import { Checkbox } from "@mantine/core";
import { useText } from "../../strings/text";
import { TickField } from "../../ui/Fields";
import { Panel } from "../../ui/Page";
import styles from "./Calendars.module.css";
import type { CalendarTyped } from "./calendar-form";
import { calendarFields } from "./fields";
import { HoursEditor } from "./HoursEditor";
import { TypedFields } from "./TypedFields";
import { ZoneField } from "./ZoneField";

interface Props {
  readonly value: CalendarTyped;
  readonly onChange: (value: CalendarTyped) => void;
}

const Who = ({ value, onChange }: Props) => {
  const t = useText();
  return (
    <Panel title={t("calendar.who")}>
      <div className={styles.fields}>
        <TypedFields shown={calendarFields} names={["name"]} value={value} onChange={onChange} />
        <ZoneField value={value.hours} onChange={(hours) => onChange({ ...value, hours })} />
      </div>
      <TickField
        label={t("calendar.accepting")}
        description={t("calendar.accepting.hint")}
        checked={value.accepting}
        onChange={(accepting) => onChange({ ...value, accepting })}
      />
    </Panel>
  );
};

const travelNames = ["latitude", "longitude", "radius", "speed", "notice"] as const;
const feeNames = ["perVisit", "perExtraCar", "perMile", "currency"] as const;

const Skills = ({ value, onChange }: Props) => {
  const t = useText();
  return (
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
  );
};

/** Everything an inspector says of their time, in panels. */
export const CalendarFields = ({ value, onChange }: Props) => {
  const t = useText();
  const typed = { shown: calendarFields, value, onChange };
  return (
    <>
      <Who value={value} onChange={onChange} />
      <HoursEditor
        title={t("hours-edit.title")}
        hint={t("hours-edit.hint")}
        value={value.hours}
        onChange={(hours) => onChange({ ...value, hours })}
      />
      <Panel title={t("calendar.travel")} hint={t("calendar.travel.hint")}>
        <div className={styles.fields}>
          <TypedFields {...typed} names={travelNames} />
        </div>
      </Panel>
      <Panel title={t("calendar.fees")}>
        <div className={styles.fields}>
          <TypedFields {...typed} names={feeNames} />
        </div>
      </Panel>
      <Skills value={value} onChange={onChange} />
    </>
  );
};
