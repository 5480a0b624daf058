import styles from "./Answers.module.css";
import { useByHand } from "./use-by-hand";

interface Props<T extends string> {
  readonly legend: string;
  readonly name: string;
  readonly value: T | undefined;
  readonly options: readonly { readonly value: T; readonly label: string; readonly hint?: string }[];
  readonly onChange: (value: T) => void;
  /** Instead of `onChange` where it was pressed with finger or mouse: arrow keys change a choice and mean nothing more by it. */
  readonly onPick?: ((value: T) => void) | undefined;
  /** Side by side where they fit; a list when there are many or they are long. */
  readonly stacked?: boolean;
}

/** One of several answers as big targets. Radio buttons underneath, so keys and screen readers know what they are. */
export const Choices = <T extends string>({
  legend,
  name,
  value,
  options,
  onChange,
  onPick,
  stacked = false,
}: Props<T>) => {
  const { props, taken } = useByHand();
  const choose = (chosen: T): void => (taken() && onPick ? onPick(chosen) : onChange(chosen));
  return (
    <fieldset className={styles.choices} data-stacked={stacked}>
      <legend className="only-read">{legend}</legend>
      {options.map((option) => (
        <label key={option.value} className={styles.choice} data-chosen={value === option.value} {...props}>
          <input
            type="radio"
            name={name}
            value={option.value}
            checked={value === option.value}
            onChange={() => choose(option.value)}
          />
          <span>
            {option.label}
            {option.hint !== undefined && <small>{option.hint}</small>}
          </span>
        </label>
      ))}
    </fieldset>
  );
};
