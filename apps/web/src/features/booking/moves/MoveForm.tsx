import { Button } from "@mantine/core";
import type { ReactNode } from "react";
import { useText } from "../../../strings/text";
import { Panel } from "../../../ui/Page";
import styles from "../Booking.module.css";
import { MoveProblem } from "../MoveProblem";
import type { MoveProps } from "./Moves";

interface Props extends MoveProps {
  /** Which move: its words are called by it. */
  readonly of: "request" | "accept" | "confirm" | "take-to-road" | "decline" | "cancel";
  readonly hint?: string;
  /** Stands above everything else. */
  readonly caution?: ReactNode;
  readonly moving: {
    readonly error: Error | null;
    readonly isPending: boolean;
  };
  readonly isReady: boolean;
  readonly onSubmit: () => void;
  readonly children: ReactNode;
}

/** What is entered for a move of a visit, what was wanting when it was tried, and the button that does it. */
export const MoveForm = ({ appointment, of, hint, caution, moving, isReady, onSubmit, children }: Props) => {
  const t = useText();
  const ends = of === "decline" || of === "cancel";
  return (
    <Panel title={t(`moves.${of}.title`)} hint={hint}>
      <form
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          onSubmit();
        }}
      >
        {caution}
        {moving.error !== null && <MoveProblem error={moving.error} appointment={appointment} />}
        {children}
        <div>
          <Button
            type="submit"
            {...(ends ? { variant: "default" } : { size: "md" })}
            disabled={!isReady}
            loading={moving.isPending}
          >
            {t(`moves.${of}.do`)}
          </Button>
        </div>
      </form>
    </Panel>
  );
};
