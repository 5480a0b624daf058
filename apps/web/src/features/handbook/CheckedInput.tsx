import { TextInput } from "@mantine/core";
import { useState, type ReactNode, type Ref } from "react";
import styles from "./OwnFigures.module.css";

interface Props {
  readonly label: string;
  readonly hint?: ReactNode;
  /** Stands in the field. */
  readonly unit?: string;
  readonly value: string;
  /** What is wrong with it, in words. */
  readonly wrong: string | undefined;
  /** Saving was tried: what is wrong shows everywhere, also where nothing was typed. */
  readonly tried: boolean;
  readonly numeric?: boolean;
  readonly required?: boolean;
  /** Words on the left, field on the right, where there is room. */
  readonly beside?: boolean;
  readonly className?: string;
  readonly onChange: (value: string) => void;
  readonly ref?: Ref<HTMLInputElement>;
}

const besides = {
  root: styles.beside,
  label: styles.besideLabel,
  description: styles.besideHint,
  wrapper: styles.besideField,
  error: styles.besideError,
};

/** Fields side by side line up where the hints stand below. */
export const hintBelow: ("label" | "input" | "description" | "error")[] = [
  "label",
  "input",
  "error",
  "description",
];

/** A field that says what is wrong with what was typed once it is left. */
export const CheckedInput = (props: Props) => {
  const { label, hint, unit = "", value, wrong, tried, onChange, ref } = props;
  const [left, setLeft] = useState(false);
  return (
    <TextInput
      size="md"
      ref={ref}
      className={props.className}
      classNames={props.beside === true ? besides : undefined}
      inputMode={props.numeric === true ? "decimal" : "text"}
      inputWrapperOrder={hintBelow}
      label={label}
      description={hint}
      aria-required={props.required}
      error={(tried || (left && value.trim() !== "")) && wrong}
      rightSection={unit === "" ? undefined : <span className={styles.unit}>{unit}</span>}
      rightSectionWidth={unit === "" ? undefined : `${unit.length * 0.62 + 1.4}rem`}
      rightSectionPointerEvents="none"
      value={value}
      onChange={(event) => onChange(event.currentTarget.value)}
      onBlur={() => setLeft(true)}
    />
  );
};
