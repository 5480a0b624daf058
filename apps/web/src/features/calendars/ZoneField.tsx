import { NativeSelect } from "@mantine/core";
import { useText } from "../../strings/text";

const zones = Intl.supportedValuesOf("timeZone").filter((zone) => /^[A-Za-z]+\//.test(zone));

interface Props {
  readonly value: string;
  readonly onChange: (zone: string) => void;
}

export const ZoneField = ({ value, onChange }: Props) => {
  const t = useText();
  const all = zones.includes(value) ? zones : [value, ...zones];
  return (
    <NativeSelect
      size="md"
      label={t("calendar.zone")}
      description={t("calendar.zone.hint")}
      value={value}
      data={all.map((zone) => ({ value: zone, label: zone.replaceAll("_", " ") }))}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
};
