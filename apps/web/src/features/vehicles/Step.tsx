import type { ReactNode } from "react";
import styles from "./Car.module.css";

/** One thing to do next. */
export const Step = ({ title, children }: { readonly title: string; readonly children?: ReactNode }) => (
  <li className={styles.step}>
    <h3>{title}</h3>
    {children}
  </li>
);
