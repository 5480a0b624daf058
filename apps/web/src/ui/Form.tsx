import type { FormEvent, ReactNode } from "react";
import styles from "./Form.module.css";
import { ProblemNotice } from "./ProblemNotice";

interface Props {
  /** Why what was sent was refused; it stands above the fields. */
  readonly error?: unknown;
  readonly onSubmit: () => void;
  readonly children: ReactNode;
}

/** Fields and what is done with them, by its button or by Enter. */
export const Form = ({ error = null, onSubmit, children }: Props) => {
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    onSubmit();
  };
  return (
    <form className={styles.form} onSubmit={submit}>
      {error !== null && <ProblemNotice error={error} />}
      {children}
    </form>
  );
};
