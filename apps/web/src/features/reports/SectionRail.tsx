import { NativeSelect, SegmentedControl } from "@mantine/core";
import { useText } from "../../strings/text";
import { capital } from "../../entities/sheet/sheet-index";
import type { SheetSearch } from "./sheet-search";
import type { SheetMove, SheetView } from "./sheet-view";
import styles from "./Sheet.module.css";
import { ViewSwitch } from "./ViewSwitch";

interface Props {
  readonly view: SheetView;
  readonly items: SheetSearch["items"];
  readonly onMove: (move: SheetMove) => void;
}

const ItemChoice = ({ items, onMove }: Omit<Props, "view">) => {
  const t = useText();
  return (
    <SegmentedControl
      fullWidth
      aria-label={t("sheet.items")}
      value={items ?? "all"}
      onChange={(next) => onMove({ type: "items", items: next })}
      data={(["all", "core", "open"] as const).map((value) => ({ value, label: t(`sheet.items.${value}`) }))}
    />
  );
};

/** The sections where there is no room for a list of them. */
const SectionChoice = ({ view: { entries, current }, onMove }: Omit<Props, "items">) => {
  const t = useText();
  return (
    <NativeSelect
      className={styles.chooser}
      size="md"
      label={t("sheet.section")}
      value={current?.id ?? ""}
      onChange={(event) => onMove({ type: "section", section: event.currentTarget.value })}
      data={entries.map(({ section: { id, number, words }, done, all }) => ({
        value: id,
        label: t("sheet.section.option", { number, title: capital(words.american), done, all }),
      }))}
    />
  );
};

const SectionList = ({ view: { entries, current }, onMove }: Omit<Props, "items">) => (
  <ol className={styles.sections}>
    {entries.map(({ section: { id, number, words }, done, all }) => (
      <li key={id}>
        <button
          type="button"
          aria-current={id === current?.id ? "step" : undefined}
          onClick={() => onMove({ type: "section", section: id })}
        >
          <span className={styles.number}>{number}</span>
          <span>{capital(words.american)}</span>
          <span className={styles.done}>
            {done}/{all}
          </span>
        </button>
      </li>
    ))}
  </ol>
);

/** How the sheet is gone through, which of its lines are shown, and its sections with what is answered of each. */
export const SectionRail = ({ view, items, onMove }: Props) => {
  const t = useText();
  return (
    <nav className={styles.rail} aria-label={t("sheet.sections")}>
      <ViewSwitch view="sections" onView={() => onMove({ type: "walk" })} />
      <ItemChoice items={items} onMove={onMove} />
      <SectionChoice view={view} onMove={onMove} />
      <SectionList view={view} onMove={onMove} />
    </nav>
  );
};
