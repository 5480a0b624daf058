import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { Bays } from "./Bays";
import styles from "./Calendars.module.css";
import { Closures } from "./Closures";
import { siteFields } from "./fields";
import { HoursEditor } from "./HoursEditor";
import type { SiteTyped } from "./site-form";
import { TypedFields } from "./TypedFields";
import { ZoneField } from "./ZoneField";

interface Props {
  readonly value: SiteTyped;
  readonly onChange: (value: SiteTyped) => void;
}

const Where = ({ value, onChange }: Props) => {
  const t = useText();
  const typed = { shown: siteFields, value, onChange };
  return (
    <Panel title={t("site.where")}>
      <TypedFields {...typed} names={["name", "address"]} />
      <div className={styles.fields}>
        <TypedFields {...typed} names={["latitude", "longitude"]} />
      </div>
      <ZoneField value={value.hours} onChange={(hours) => onChange({ ...value, hours })} />
    </Panel>
  );
};

const feeNames = ["perVisit", "perLiftSpell", "currency"] as const;

/** Everything a dealer says of a site, in panels. */
export const SiteFields = ({ value, onChange }: Props) => {
  const t = useText();
  const set = (change: Partial<SiteTyped>): void => onChange({ ...value, ...change });
  return (
    <>
      <Where value={value} onChange={onChange} />
      <HoursEditor
        title={t("hours-edit.title.site")}
        value={value.hours}
        onChange={(hours) => set({ hours })}
      />
      <Bays value={value.bays} onChange={(bays) => set({ bays })} />
      <Closures value={value.closures} zone={value.hours.zone} onChange={(closures) => set({ closures })} />
      <Panel title={t("site.fees")}>
        <div className={styles.fields}>
          <TypedFields shown={siteFields} names={feeNames} value={value} onChange={onChange} />
        </div>
      </Panel>
    </>
  );
};
