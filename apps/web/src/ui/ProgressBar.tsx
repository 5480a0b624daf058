import styles from "./ProgressBar.module.css";

interface Props {
  readonly value: number;
  readonly max: number;
  /** Of what it says how far it has come. */
  readonly label: string;
}

/** How much of something has gone. */
export const ProgressBar = ({ value, max, label }: Props) => (
  <progress className={styles.bar} value={value} max={Math.max(1, max)} aria-label={label} />
);
