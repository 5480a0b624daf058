import { zoneName, zones } from "../../entities/time/zones";
import { useText } from "../../strings/text";
import { ChoiceField } from "../../ui/Fields";
import type { HoursTyped } from "./weekly-hours";

interface Props {
  readonly value: HoursTyped;
  readonly onChange: (value: HoursTyped) => void;
}

/** The zone on whose clock the hours are meant. */
export const ZoneField = ({ value, onChange }: Props) => {
  const t = useText();
  const { zone } = value;
  const all = zones.includes(zone) ? zones : [zone, ...zones];
  return (
    <ChoiceField
      label={t("calendar.zone")}
      description={t("calendar.zone.hint")}
      value={zone}
      data={all.map((one) => ({ value: one, label: zoneName(one) }))}
      onChange={(chosen) => onChange({ ...value, zone: chosen })}
    />
  );
};
