import type { Outcome } from "@evenhand/shared/outcome";
import type { ReactElement } from "react";
import styles from "./OutcomeSign.module.css";

/** Drawn rather than typed: not every font holds ⊘, and all seven should weigh the same. */
const drawing: Readonly<Record<Outcome, ReactElement>> = {
  agree: <path d="M5 9.5h14M5 14.5h14" />,
  consistent: <path d="M4.5 14c1.6-4 4.4-4.6 7.5-2s5.9 2 7.5-2" />,
  doubtful: (
    <>
      <path d="M8.2 9a3.8 3.8 0 1 1 5.6 3.3c-1.3.7-1.8 1.4-1.8 2.7" />
      <circle cx="12" cy="18.8" r="1.35" fill="currentColor" stroke="none" />
    </>
  ),
  differ: <path d="M5 9.5h14M5 14.5h14M15.5 5l-7 14" />,
  unseen: <circle cx="12" cy="12" r="6.2" />,
  unstated: <path d="M12 5v14M5 12h14" />,
  incomparable: (
    <>
      <circle cx="12" cy="12" r="7" />
      <path d="M16.9 7.1 7.1 16.9" />
    </>
  ),
};

interface Props {
  readonly outcome: Outcome;
  /** Edge of the tile in pixels. */
  readonly size?: number;
  /** Without the tile round it. */
  readonly bare?: boolean;
}

/** The outcome's sign; the word always stands beside it, so the drawing itself is silent to screen readers. */
export const OutcomeSign = ({ outcome, size = 34, bare = false }: Props) => (
  <span
    className={bare ? styles.bare : styles.tile}
    data-outcome={outcome}
    style={{ width: size, height: size }}
    aria-hidden="true"
  >
    <svg viewBox="0 0 24 24" width={size * 0.68} height={size * 0.68}>
      {drawing[outcome]}
    </svg>
  </span>
);
