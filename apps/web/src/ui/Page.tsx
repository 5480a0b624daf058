import { useEffect, useLayoutEffect, type ReactNode } from "react";
import { useText } from "../strings/text";
import { endFirstSight } from "./first-sight";
import styles from "./Page.module.css";
import { useTitleFocus } from "./title-focus";

interface PageProps {
  /** Also the document's title. */
  readonly title: string;
  readonly over?: ReactNode;
  readonly under?: ReactNode;
  readonly actions?: ReactNode;
  readonly narrow?: boolean;
  readonly children: ReactNode;
}

/** One screen: a title, what belongs to the whole of it, and its sections. */
export const Page = ({ title, over, under, actions, narrow = false, children }: PageProps) => {
  const t = useText();
  const heading = useTitleFocus();
  useLayoutEffect(endFirstSight, []);
  useEffect(() => {
    document.title = t("document.title", { title });
  }, [t, title]);
  return (
    <div className={narrow ? styles.narrow : styles.page}>
      <header className={styles.head}>
        <div className={styles.titles}>
          {over !== undefined && <div className={styles.over}>{over}</div>}
          <h1 ref={heading} tabIndex={-1}>
            {title}
          </h1>
          {under !== undefined && <div className={styles.under}>{under}</div>}
        </div>
        {actions !== undefined && <div className={`${styles.actions} no-print`}>{actions}</div>}
      </header>
      {children}
    </div>
  );
};

interface PanelProps {
  readonly title?: ReactNode;
  readonly hint?: ReactNode;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
  readonly id?: string;
}

/** A sheet of paper on the page. */
export const Panel = ({ title, hint, actions, children, id }: PanelProps) => (
  <section className={styles.panel} id={id}>
    {(title !== undefined || actions !== undefined) && (
      <div className={styles.panelHead}>
        <div>
          {title !== undefined && <h2>{title}</h2>}
          {hint !== undefined && <p className={styles.hint}>{hint}</p>}
        </div>
        {actions}
      </div>
    )}
    {children}
  </section>
);

/** An empty place says what to do. */
export const Empty = ({ title, children }: { readonly title: string; readonly children?: ReactNode }) => (
  <div className={styles.empty}>
    <p className={styles.emptyTitle}>{title}</p>
    {children !== undefined && <div className={styles.emptyBody}>{children}</div>}
  </div>
);

/** Term and description in two columns. */
export const Facts = ({ rows }: { readonly rows: readonly (readonly [ReactNode, ReactNode])[] }) => (
  <dl className={styles.facts}>
    {rows.map(([term, text], index) => (
      <div key={index}>
        <dt>{term}</dt>
        <dd>{text}</dd>
      </div>
    ))}
  </dl>
);

export const Tag = ({
  children,
  strong = false,
}: {
  readonly children: ReactNode;
  readonly strong?: boolean;
}) => <span className={strong ? styles.tagStrong : styles.tag}>{children}</span>;
