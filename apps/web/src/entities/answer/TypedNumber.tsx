import { useState, type ReactNode } from "react";
import { useText } from "../../strings/text";
import { NumberField } from "./NumberField";
import { parseNumber } from "./parse-number";

interface Props {
  readonly label: string;
  readonly value: number | undefined;
  readonly unit: ReactNode;
  /** What was typed before and could not be read. */
  readonly unread?: string | undefined;
  readonly least?: number;
  readonly fresh?: boolean | undefined;
  /** `text`: what was typed where it cannot be read; then there is no value. */
  readonly onChange: (value: number | undefined, text: string | undefined) => void;
}

/** A field for one number. Keeps what is typed; give it a key to start anew. */
export const TypedNumber = ({ label, value, unit, unread, least, fresh, onChange }: Props) => {
  const t = useText();
  const [text, setText] = useState(unread ?? (value === undefined ? "" : String(value)));
  const read = (typed: string): number | undefined => {
    const number = parseNumber(typed);
    return number !== undefined && least !== undefined && number < least ? undefined : number;
  };
  const wrong = text.trim() !== "" && read(text) === undefined;
  return (
    <NumberField
      label={label}
      text={text}
      unit={unit}
      fresh={fresh}
      wrong={wrong ? t("number.unread") : undefined}
      onText={(typed) => {
        setText(typed);
        const number = read(typed);
        onChange(number, number === undefined && typed.trim() !== "" ? typed : undefined);
      }}
    />
  );
};
