import { SEVERITIES } from "@evenhand/shared/terms";
import { Button, CloseButton, NativeSelect, SegmentedControl, TextInput } from "@mantine/core";
import { useDebouncedCallback } from "@mantine/hooks";
import { IconSearch } from "@tabler/icons-react";
import type { Section } from "@evenhand/shared/sheet";
import { useState } from "react";
import { useText } from "../../strings/text";
import { isFiltered } from "./filters";
import type { ComparisonSearch } from "./search";
import { standings } from "../../entities/comparison/terms";
import { oneOf } from "../../service/one-of";
import { capital } from "../../entities/sheet/sheet-index";
import styles from "./Filters.module.css";

interface Props {
  readonly search: ComparisonSearch;
  readonly sections: readonly Section[];
  readonly shown: number;
  readonly total: number;
  readonly onChange: (change: Partial<ComparisonSearch>) => void;
  readonly onClear: () => void;
}

const WordSearch = ({
  q,
  onChange,
}: {
  readonly q: string | undefined;
  readonly onChange: (q: string | undefined) => void;
}) => {
  const t = useText();
  const [typed, setTyped] = useState(q ?? "");
  const send = useDebouncedCallback(
    (text: string) => onChange(text.trim() === "" ? undefined : text.trim()),
    250,
  );
  const type = (text: string): void => {
    setTyped(text);
    send(text);
  };
  return (
    <TextInput
      type="search"
      label={t("filter.search")}
      description={t("filter.search.hint")}
      value={typed}
      onChange={(event) => type(event.currentTarget.value)}
      leftSection={<IconSearch size={16} aria-hidden="true" />}
      rightSection={
        typed === "" ? null : (
          <CloseButton size="sm" aria-label={t("filter.search.clear")} onClick={() => type("")} />
        )
      }
    />
  );
};

/** What to show and in which order. */
export const Filters = ({ search, sections, shown, total, onChange, onClear }: Props) => {
  const t = useText();
  return (
    <div className={styles.filters}>
      <SegmentedControl
        fullWidth
        aria-label={t("filter.order")}
        value={search.order ?? "pressing"}
        onChange={(order) => onChange({ order: order === "sheet" ? "sheet" : undefined })}
        data={[
          { value: "pressing", label: t("filter.order.pressing") },
          { value: "sheet", label: t("filter.order.sheet") },
        ]}
      />
      <WordSearch key={search.q ?? ""} q={search.q} onChange={(q) => onChange({ q })} />
      <NativeSelect
        label={t("filter.section")}
        value={search.section ?? ""}
        onChange={(event) => onChange({ section: event.currentTarget.value || undefined })}
        data={[
          { value: "", label: t("filter.all") },
          ...sections.map(({ id, number, words }) => ({
            value: id,
            label: `${number} ${capital(words.american)}`,
          })),
        ]}
      />
      <div className={styles.pair}>
        <NativeSelect
          label={t("filter.severity")}
          value={search.severity ?? ""}
          onChange={(event) => onChange({ severity: oneOf(SEVERITIES, event.currentTarget.value) })}
          data={[
            { value: "", label: t("filter.all") },
            ...SEVERITIES.map((one) => ({ value: one, label: t(`at-stake.${one}`) })),
          ]}
        />
        <NativeSelect
          label={t("filter.standing")}
          value={search.standing ?? ""}
          onChange={(event) => onChange({ standing: oneOf(standings, event.currentTarget.value) })}
          data={[
            { value: "", label: t("filter.all") },
            ...standings.map((one) => ({ value: one, label: t(`standing.${one}`) })),
          ]}
        />
      </div>
      <output className={styles.shown}>
        {t("filter.shown", { shown, total })}
        {isFiltered(search) && (
          <Button variant="subtle" size="compact-sm" onClick={onClear}>
            {t("filter.clear")}
          </Button>
        )}
      </output>
    </div>
  );
};
