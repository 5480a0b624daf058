import styles from "./Answers.module.css";
import { useByHand } from "./use-by-hand";

interface Option<T extends string> {
  readonly value: T;
  readonly label: string;
  readonly hint?: string;
}

interface Props<T extends string> {
  readonly legend: string;
  readonly name: string;
  readonly value: T | undefined;
  readonly options: readonly Option<T>[];
  readonly onChange: (value: T) => void;
  /** Instead of `onChange` where it was pressed with finger or mouse: arrow keys change a choice and mean nothing more by it. */
  readonly onPick?: ((value: T) => void) | undefined;
  /** Side by side where they fit; a list when there are many or they are long. */
  readonly stacked?: boolean;
}

interface TargetProps<T extends string> {
  readonly name: string;
  readonly option: Option<T>;
  readonly chosen: boolean;
  readonly hand: ReturnType<typeof useByHand>["props"];
  readonly onChoose: (value: T) => void;
}

const Target = <T extends string>({ name, option, chosen, hand, onChoose }: TargetProps<T>) => (
  <label className={styles.choice} data-chosen={chosen} {...hand}>
    <input
      type="radio"
      name={name}
      value={option.value}
      checked={chosen}
      onChange={() => onChoose(option.value)}
    />
    <span>
      {option.label}
      {option.hint !== undefined && <small>{option.hint}</small>}
    </span>
  </label>
);

/** One of several answers as big targets. Radio buttons underneath, so keys and screen readers know what they are. */
export const Choices = <T extends string>(choices: Props<T>) => {
  const { legend, name, value, options, onChange, onPick, stacked = false } = choices;
  const { props, taken } = useByHand();
  const choose = (chosen: T): void => (taken() && onPick ? onPick(chosen) : onChange(chosen));
  return (
    <fieldset className={styles.choices} data-stacked={stacked}>
      <legend className="only-read">{legend}</legend>
      {options.map((option) => (
        <Target
          key={option.value}
          name={name}
          option={option}
          chosen={value === option.value}
          hand={props}
          onChoose={choose}
        />
      ))}
    </fieldset>
  );
};
