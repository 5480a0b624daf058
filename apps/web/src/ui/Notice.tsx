import { IconAlertTriangle, IconHandStop, IconInfoCircle } from "@tabler/icons-react";
import type { ReactNode } from "react";
import styles from "./Notice.module.css";

interface Props {
  /** `caution`: someone can be hurt. `refusal`: it was not done, and why. `note`: worth knowing. */
  readonly kind: "caution" | "refusal" | "note";
  readonly title?: ReactNode;
  readonly children?: ReactNode;
}

const icons = { caution: IconAlertTriangle, refusal: IconHandStop, note: IconInfoCircle } as const;

export const Notice = ({ kind, title, children }: Props) => {
  const Icon = icons[kind];
  return (
    <div className={styles.notice} data-kind={kind} role={kind === "refusal" ? "alert" : undefined}>
      <Icon size={20} stroke={1.8} aria-hidden="true" className={styles.icon} />
      <div className={styles.body}>
        {title !== undefined && <p className={styles.title}>{title}</p>}
        {children}
      </div>
    </div>
  );
};
