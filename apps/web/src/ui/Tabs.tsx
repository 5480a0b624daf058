import { useId, type KeyboardEvent, type ReactNode } from "react";
import styles from "./Tabs.module.css";

interface Tab<T extends string> {
  readonly value: T;
  readonly label: string;
}

interface ListProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly tabs: readonly Tab<T>[];
  readonly onChange: (value: T) => void;
}

const steps: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowLeft: -1 };

/** The next tab with the arrow keys, round at the ends; it takes the focus with it. */
const moveByArrow =
  <T extends string>(id: string, { value, tabs, onChange }: ListProps<T>) =>
  (event: KeyboardEvent<HTMLDivElement>): void => {
    const step = steps[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const at = tabs.findIndex((tab) => tab.value === value);
    const next = tabs[(at + step + tabs.length) % tabs.length];
    if (!next) return;
    onChange(next.value);
    document.getElementById(`${id}-${next.value}`)?.focus();
  };

const TabList = <T extends string>({ id, ...list }: ListProps<T> & { readonly id: string }) => {
  const { label, value, tabs, onChange } = list;
  return (
    <div
      className={`${styles.list} no-print`}
      role="tablist"
      aria-label={label}
      tabIndex={-1}
      onKeyDown={moveByArrow(id, list)}
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
  );
};

/** Tabs by the WAI-ARIA pattern: arrows move, the panel follows. */
export const Tabs = <T extends string>({
  children,
  ...list
}: ListProps<T> & { readonly children: ReactNode }) => {
  const id = useId();
  return (
    <div className={styles.tabs}>
      <TabList id={id} {...list} />
      <div
        id={`${id}-panel`}
        role="tabpanel"
        aria-labelledby={`${id}-${list.value}`}
        className={styles.panel}
      >
        {children}
      </div>
    </div>
  );
};
