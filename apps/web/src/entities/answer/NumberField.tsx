import { useEffect, useId, useRef, type ReactNode } from "react";
import styles from "./Answers.module.css";

interface Props {
  readonly label: string;
  /** As typed. */
  readonly text: string;
  readonly unit: ReactNode;
  /** Why it cannot be taken as it stands. It stays as it was typed. */
  readonly wrong: string | undefined;
  readonly onText: (text: string) => void;
  /** Takes the focus as it appears. */
  readonly fresh?: boolean | undefined;
}

/** Takes the focus as it appears, where it is fresh. */
const useFocus = (fresh: boolean) => {
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (fresh) field.current?.focus();
  }, [fresh]);
  return field;
};

/** A number with its unit beside it and the number pad on a phone. What cannot be read stays, is marked, and is said. */
export const NumberField = ({ label, text, unit, wrong, onText, fresh = false }: Props) => {
  const id = useId();
  const said = wrong === undefined ? undefined : `${id}-wrong`;
  const field = useFocus(fresh);
  const typing = { type: "text", inputMode: "decimal", autoComplete: "off", enterKeyHint: "next" } as const;
  return (
    <div className={styles.number} data-invalid={wrong !== undefined}>
      <label className={styles.numberLabel} htmlFor={id}>
        {label}
      </label>
      <span className={styles.numberBox}>
        <input
          id={id}
          ref={field}
          {...typing}
          value={text}
          aria-invalid={wrong !== undefined}
          aria-describedby={said}
          onChange={(event) => onText(event.currentTarget.value)}
        />
        <span className={styles.unit}>{unit}</span>
      </span>
      {wrong !== undefined && (
        <p className={styles.wrong} id={said} role="alert">
          {wrong}
        </p>
      )}
    </div>
  );
};
