import { Button } from "@mantine/core";
import type { ReactNode } from "react";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Calendars.module.css";

interface Props {
  readonly declaring: {
    readonly error: Error | null;
    readonly isPending: boolean;
    readonly mutate: () => void;
  };
  readonly button: string;
  readonly children: ReactNode;
}

/** Something that is declared: its fields, what was wrong with it, and the button. */
export const DeclareForm = ({ declaring, button, children }: Props) => (
  <form
    className={styles.form}
    onSubmit={(event) => {
      event.preventDefault();
      declaring.mutate();
    }}
  >
    {declaring.error !== null && <ProblemNotice error={declaring.error} />}
    {children}
    <div>
      <Button type="submit" variant="default" loading={declaring.isPending}>
        {button}
      </Button>
    </div>
  </form>
);
