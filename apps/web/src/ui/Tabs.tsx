import { useId, type KeyboardEvent, type ReactNode } from "react";
import styles from "./Tabs.module.css";

interface Props<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly tabs: readonly { readonly value: T; readonly label: string }[];
  readonly onChange: (value: T) => void;
  readonly children: ReactNode;
}

/** Tabs by the WAI-ARIA pattern: arrows move, the panel follows. */
export const Tabs = <T extends string>({ label, value, tabs, onChange, children }: Props<T>) => {
  const id = useId();
  const move = (event: KeyboardEvent<HTMLDivElement>): void => {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const at = tabs.findIndex((tab) => tab.value === value);
    const next = tabs[(at + step + tabs.length) % tabs.length];
    if (!next) return;
    onChange(next.value);
    document.getElementById(`${id}-${next.value}`)?.focus();
  };
  return (
    <div className={styles.tabs}>
      <div
        className={`${styles.list} no-print`}
        role="tablist"
        aria-label={label}
        tabIndex={-1}
        onKeyDown={move}
      >
        {tabs.map((tab) => (
          <button
            key={tab.value}
            id={`${id}-${tab.value}`}
            type="button"
            role="tab"
            aria-selected={tab.value === value}
            aria-controls={`${id}-panel`}
            tabIndex={tab.value === value ? 0 : -1}
            className={styles.tab}
            onClick={() => onChange(tab.value)}
          >
            {tab.label}
          </button>
        ))}
      </div>
      <div id={`${id}-panel`} role="tabpanel" aria-labelledby={`${id}-${value}`} className={styles.panel}>
        {children}
      </div>
    </div>
  );
};
