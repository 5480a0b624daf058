import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";

interface Times {
  readonly opens: string;
  readonly closes: string;
}

interface Props {
  readonly value: Times;
  readonly required?: boolean;
  readonly onChange: (change: Partial<Times>) => void;
}

/** From when until when; the end of a day is shown as the midnight it is. */
export const TimesFields = ({ value: { opens, closes }, required = false, onChange }: Props) => {
  const t = useText();
  return (
    <>
      <TextField
        type="time"
        required={required}
        label={t("hours-edit.opens")}
        value={opens}
        onChange={(typed) => onChange({ opens: typed })}
      />
      <TextField
        type="time"
        required={required}
        label={t("hours-edit.closes")}
        value={closes === "24:00" ? "00:00" : closes}
        onChange={(typed) => onChange({ closes: typed })}
      />
    </>
  );
};
