import { Button, TextInput } from "@mantine/core";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import styles from "./Calendars.module.css";
import { ExceptionsEditor, WeeklyEditor } from "./HoursEditor";
import type { SiteTyped } from "./site-form";
import { newKey } from "./weekly-hours";
import { today } from "../../entities/time/zone-time";
import { ZoneField } from "./ZoneField";

interface Props {
  readonly value: SiteTyped;
  readonly onChange: (value: SiteTyped) => void;
}

const Bays = ({ value, onChange }: Props) => {
  const t = useText();
  return (
    <Panel title={t("site.bays")} hint={t("site.bays.hint")}>
      <Notice kind="caution">
        <p>{t("site.bay.caution")}</p>
      </Notice>
      {value.bays.map((bay, index) => (
        <div key={bay.key} className={styles.fields}>
          <TextInput
            size="md"
            required
            withAsterisk={false}
            label={t("site.bay", { number: index + 1 })}
            value={bay.name}
            onChange={({ currentTarget }) =>
              onChange({
                ...value,
                bays: value.bays.map((one) =>
                  one.key === bay.key ? { ...one, name: currentTarget.value } : one,
                ),
              })
            }
          />
          <Button
            variant="default"
            size="md"
            onClick={() => onChange({ ...value, bays: value.bays.filter(({ key }) => key !== bay.key) })}
          >
            {t("hours-edit.remove")}
          </Button>
        </div>
      ))}
      <div>
        <Button
          variant="default"
          onClick={() => onChange({ ...value, bays: [...value.bays, { key: newKey(), id: null, name: "" }] })}
        >
          {t("site.bay.add")}
        </Button>
      </div>
    </Panel>
  );
};

const Closures = ({ value, onChange }: Props) => {
  const t = useText();
  const set = (key: string, change: { from?: string; until?: string; note?: string }): void =>
    onChange({
      ...value,
      closures: value.closures.map((one) => (one.key === key ? { ...one, ...change } : one)),
    });
  const add = (): void => {
    const date = today(value.hours.zone);
    const closure = { key: newKey(), from: `${date}T09:00`, until: `${date}T12:00`, note: "" };
    onChange({ ...value, closures: [...value.closures, closure] });
  };
  return (
    <Panel title={t("site.closures")} hint={t("site.closures.hint")}>
      {value.closures.map((one, index) => (
        <fieldset key={one.key} className={styles.row}>
          <legend>{t("site.closure.group", { number: index + 1 })}</legend>
          <div className={`${styles.fields} ${styles.wide}`}>
            <TextInput
              size="md"
              type="datetime-local"
              required
              withAsterisk={false}
              label={t("site.closure.from")}
              value={one.from.slice(0, 16)}
              onChange={(event) => set(one.key, { from: event.currentTarget.value })}
            />
            <TextInput
              size="md"
              type="datetime-local"
              required
              withAsterisk={false}
              label={t("site.closure.until")}
              value={one.until.slice(0, 16)}
              onChange={(event) => set(one.key, { until: event.currentTarget.value })}
            />
            <TextInput
              size="md"
              label={t("site.closure.note")}
              maxLength={200}
              value={one.note}
              onChange={(event) => set(one.key, { note: event.currentTarget.value })}
            />
            <Button
              variant="default"
              size="md"
              onClick={() =>
                onChange({ ...value, closures: value.closures.filter(({ key }) => key !== one.key) })
              }
            >
              {t("hours-edit.remove")}
            </Button>
          </div>
        </fieldset>
      ))}
      <div>
        <Button variant="default" onClick={add}>
          {t("site.closure.add")}
        </Button>
      </div>
    </Panel>
  );
};

/** Everything a dealer says of a site, in panels. */
export const SiteFields = ({ value, onChange }: Props) => {
  const t = useText();
  const field = (
    name: "name" | "address" | "latitude" | "longitude" | "perVisit" | "perLiftSpell" | "currency",
    label: string,
    hint?: string,
  ) => (
    <TextInput
      size="md"
      required
      withAsterisk={false}
      label={label}
      description={hint}
      value={value[name]}
      onChange={(event) => onChange({ ...value, [name]: event.currentTarget.value })}
    />
  );
  return (
    <>
      <Panel title={t("site.where")}>
        {field("name", t("site.name"))}
        {field("address", t("site.address"))}
        <div className={styles.fields}>
          {field("latitude", t("place.latitude"), t("place.latitude.hint"))}
          {field("longitude", t("place.longitude"), t("place.longitude.hint"))}
        </div>
        <ZoneField
          value={value.hours.zone}
          onChange={(zone) => onChange({ ...value, hours: { ...value.hours, zone } })}
        />
      </Panel>
      <Panel title={t("hours-edit.title.site")}>
        <WeeklyEditor value={value.hours} onChange={(hours) => onChange({ ...value, hours })} />
        <ExceptionsEditor value={value.hours} onChange={(hours) => onChange({ ...value, hours })} />
      </Panel>
      <Bays value={value} onChange={onChange} />
      <Closures value={value} onChange={onChange} />
      <Panel title={t("site.fees")}>
        <div className={styles.fields}>
          {field("perVisit", t("site.per-visit"))}
          {field("perLiftSpell", t("site.per-lift"))}
          {field("currency", t("calendar.currency"))}
        </div>
      </Panel>
    </>
  );
};
