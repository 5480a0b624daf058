import type { ReactNode } from "react";
import { Page } from "../../ui/Page";
import styles from "./Accounts.module.css";

interface Props {
  readonly title: string;
  readonly under: string;
  readonly children: ReactNode;
}

/** A page for who is not signed in: a short form in the middle. */
export const EntryPage = (page: Props) => (
  <div className={styles.entry}>
    <Page narrow {...page} />
  </div>
);
