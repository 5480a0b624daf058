import { useState, type ReactNode } from "react";
import styles from "./Answers.module.css";
import { parseNumber } from "./parse-number";

interface Props {
  readonly label: string;
  readonly value: number | undefined;
  readonly unit: ReactNode;
  readonly onChange: (value: number | undefined) => void;
  readonly invalid?: boolean;
  readonly describedBy?: string;
}

/** A number with its unit beside it and the number pad on a phone. Keeps what is typed; give it a key to start anew. */
export const NumberField = ({ label, value, unit, onChange, invalid = false, describedBy }: Props) => {
  const [text, setText] = useState(value === undefined ? "" : String(value));
  const unread = text.trim() !== "" && parseNumber(text) === undefined;
  return (
    <label className={styles.number} data-invalid={invalid || unread}>
      <span className={styles.numberLabel}>{label}</span>
      <span className={styles.numberBox}>
        <input
          inputMode="decimal"
          autoComplete="off"
          enterKeyHint="next"
          value={text}
          aria-invalid={invalid || unread}
          aria-describedby={describedBy}
          onChange={(event) => {
            setText(event.currentTarget.value);
            onChange(parseNumber(event.currentTarget.value));
          }}
        />
        <span className={styles.unit}>{unit}</span>
      </span>
    </label>
  );
};
