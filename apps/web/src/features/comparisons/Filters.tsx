import { SEVERITIES } from "@evenhand/shared/terms";
import { Button, CloseButton, NativeSelect, SegmentedControl, TextInput } from "@mantine/core";
import { useDebouncedCallback } from "@mantine/hooks";
import { IconSearch } from "@tabler/icons-react";
import type { Section } from "@evenhand/shared/sheet";
import { useState } from "react";
import { useText } from "../../strings/text";
import { isFiltered } from "./filters";
import type { ComparisonSearch } from "./search";
import { marks, standings } from "../../entities/comparison/terms";
import { oneOf } from "../../service/one-of";
import { capital } from "../../entities/sheet/sheet-index";
import styles from "./Filters.module.css";

interface Props {
  readonly search: ComparisonSearch;
  readonly sections: readonly Section[];
  /** Headlines of the answer's matters, in order. */
  readonly matters: readonly string[];
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

interface SelectProps {
  readonly label: string;
  readonly value: string | number | undefined;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly onChange: (value: string) => void;
}

const Select = ({ label, value, options, onChange }: SelectProps) => {
  const t = useText();
  return (
    <NativeSelect
      label={label}
      value={value ?? ""}
      onChange={(event) => onChange(event.currentTarget.value)}
      data={[{ value: "", label: t("filter.all") }, ...options]}
    />
  );
};

type PartProps = Pick<Props, "search" | "onChange">;

const Order = ({ search, onChange }: PartProps) => {
  const t = useText();
  return (
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
  );
};

const Terms = ({ search, onChange }: PartProps) => {
  const t = useText();
  return (
    <div className={styles.pair}>
      <Select
        label={t("filter.severity")}
        value={search.severity}
        options={SEVERITIES.map((one) => ({ value: one, label: t(`at-stake.${one}`) }))}
        onChange={(value) => onChange({ severity: oneOf(SEVERITIES, value) })}
      />
      <Select
        label={t("filter.standing")}
        value={search.standing}
        options={standings.map((one) => ({ value: one, label: t(`standing.${one}`) }))}
        onChange={(value) => onChange({ standing: oneOf(standings, value) })}
      />
      <Select
        label={t("filter.mark")}
        value={search.mark}
        options={marks.map((one) => ({ value: one, label: t(`mark.${one}`) }))}
        onChange={(value) => onChange({ mark: oneOf(marks, value) })}
      />
    </div>
  );
};

const Parts = ({ search, sections, matters, onChange }: Props) => {
  const t = useText();
  return (
    <>
      <Select
        label={t("filter.section")}
        value={search.section}
        options={sections.map(({ id, number, words }) => ({
          value: id,
          label: `${number} ${capital(words.american)}`,
        }))}
        onChange={(value) => onChange({ section: value || undefined })}
      />
      <Select
        label={t("filter.matter")}
        value={search.matter}
        options={matters.map((headline, at) => ({ value: String(at), label: `${at + 1} ${headline}` }))}
        onChange={(value) => onChange({ matter: value === "" ? undefined : Number(value) })}
      />
    </>
  );
};

/** What to show and in which order. */
export const Filters = (props: Props) => {
  const t = useText();
  const { search, shown, total, onChange, onClear } = props;
  return (
    <div className={styles.filters}>
      <Order search={search} onChange={onChange} />
      <WordSearch key={search.q ?? ""} q={search.q} onChange={(q) => onChange({ q })} />
      <Parts {...props} />
      <Terms search={search} onChange={onChange} />
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
