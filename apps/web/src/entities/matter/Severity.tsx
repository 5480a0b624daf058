import type { Severity as Level } from "@evenhand/shared/severity";
import { useText } from "../../strings/text";
import styles from "./Severity.module.css";

interface Props {
  readonly severity: Level;
  /** Nobody knows: how grave it could be. */
  readonly unknown?: boolean;
}

/** How grave a matter is, in words; what stops the money or can hurt somebody in the one alarm color too. */
export const Severity = ({ severity, unknown = false }: Props) => {
  const t = useText();
  return (
    <span className={styles.severity} data-severity={severity}>
      {t(unknown ? `at-stake.${severity}` : `severity.${severity}`)}
    </span>
  );
};
