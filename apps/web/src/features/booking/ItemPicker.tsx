import { Checkbox } from "@mantine/core";
import type { BriefItem } from "@evenhand/shared/booking";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";
import { Loading } from "../../ui/Loading";
import { Empty, Tag } from "../../ui/Page";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { capital, searchWords, type SheetIndex, itemWords } from "../../entities/sheet/sheet-index";
import styles from "./ItemPicker.module.css";

type One = BriefItem;

interface Props {
  readonly items: readonly One[];
  /** Without it the items are only listed. */
  readonly chosen?: ReadonlySet<string>;
  readonly onChange?: (chosen: ReadonlySet<string>) => void;
}

const fits = (index: SheetIndex, { item }: One, q: string): boolean => {
  const words = searchWords(index.items.get(item)?.words);
  return q
    .toLowerCase()
    .split(/\s+/)
    .every((word) => words.includes(word));
};

const toggled = (chosen: ReadonlySet<string> | undefined, item: string): ReadonlySet<string> => {
  const next = new Set(chosen);
  if (!next.delete(item)) next.add(item);
  return next;
};

const Takes = ({ one }: { readonly one: One }) => {
  const t = useText();
  return (
    <span className={styles.takes}>
      <span className="figures">{t("brief.item", { minutes: one.minutes })}</span>
      {one.needs.map((need) => (
        <Tag key={need}>{t(`need.${need}`)}</Tag>
      ))}
    </span>
  );
};

interface LineProps {
  readonly one: One;
  readonly words: string;
  readonly checked: boolean;
  readonly onToggle: (() => void) | undefined;
}

const PickerLine = ({ one, words, checked, onToggle }: LineProps) => (
  <div className={styles.item}>
    {onToggle === undefined ? (
      <span>{words}</span>
    ) : (
      <Checkbox size="md" label={words} checked={checked} onChange={onToggle} />
    )}
    <Takes one={one} />
  </div>
);

interface SectionProps extends Props {
  readonly index: SheetIndex;
  readonly section: SheetIndex["sheet"]["sections"][number];
  /** Nothing that is folded away hides what was looked for. */
  readonly open: boolean;
}

const PickerSection = ({ index, section, items, chosen, onChange, open }: SectionProps) => {
  const t = useText();
  const toggle = (item: string): void => onChange?.(toggled(chosen, item));
  return (
    <details className={styles.section} open={open}>
      <summary>
        {t("brief.section", {
          section: capital(section.words.american),
          count: items.length,
          chosen: items.filter(({ item }) => chosen?.has(item) ?? false).length,
        })}
      </summary>
      {items.map((one) => (
        <PickerLine
          key={one.item}
          one={one}
          words={capital(itemWords(index, one.item))}
          checked={chosen?.has(one.item) ?? false}
          onToggle={onChange === undefined ? undefined : () => toggle(one.item)}
        />
      ))}
    </details>
  );
};

interface SectionsProps extends Props {
  readonly index: SheetIndex;
  readonly q: string;
}

/** What fits the words looked for, section by section. */
const Sections = ({ index, q, items, ...picking }: SectionsProps) => {
  const t = useText();
  const shown = items.filter((one) => fits(index, one, q.trim()));
  if (shown.length === 0) return <Empty title={t("brief.none", { q })} />;
  return index.sheet.sections.map((section) => {
    const here = shown.filter(({ item }) => index.items.get(item)?.section === section.id);
    if (here.length === 0) return null;
    return (
      <PickerSection
        key={`${section.id}${q === "" ? "" : "found"}`}
        index={index}
        section={section}
        items={here}
        open={q !== "" || here.length === items.length}
        {...picking}
      />
    );
  });
};

/** Items section by section, each with its minutes and needs; to tick, or only to read. */
export const ItemPicker = (picking: Props) => {
  const t = useText();
  const [q, setQ] = useState("");
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  if (!index) return <Loading />;
  return (
    <div className={styles.picker}>
      {picking.onChange !== undefined && (
        <TextField
          type="search"
          label={t("brief.search")}
          description={t("brief.search.hint")}
          value={q}
          onChange={setQ}
        />
      )}
      <Sections index={index} q={q} {...picking} />
    </div>
  );
};
