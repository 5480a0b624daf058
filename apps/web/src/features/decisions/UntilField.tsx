import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";

interface Props {
  readonly value: string;
  readonly onChange: (until: string) => void;
}

/** The last day an offer stands. */
export const UntilField = ({ value, onChange }: Props) => {
  const t = useText();
  return (
    <TextField
      type="date"
      required
      label={t("decide.until")}
      description={t("decide.until.hint")}
      value={value}
      onChange={onChange}
    />
  );
};
