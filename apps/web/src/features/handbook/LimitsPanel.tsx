import { Checkbox } from "@mantine/core";
import { useState } from "react";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { SearchField } from "../../ui/SearchField";
import { LimitRow } from "./LimitRow";
import {
  isSet,
  limitGroups,
  limitWrong,
  ownLimitCount,
  type LimitGroup,
  type LimitsTyped,
  type OwnLimit,
} from "./own-limits";
import styles from "./OwnFigures.module.css";

interface Props {
  readonly typed: LimitsTyped;
  readonly stored: LimitsTyped;
  readonly tried: boolean;
  /** Left out where they are only to be read. */
  readonly onChange?: (typed: LimitsTyped) => void;
}

interface Filter {
  readonly q: string;
  readonly only: boolean;
}

/** What a filter leaves; what is wrong is never hidden once saving was tried. */
const shownGroups = ({ typed, stored, tried }: Props, { q, only }: Filter) => {
  const words = q.trim().toLowerCase().split(/\s+/);
  const fits = (title: string, limit: OwnLimit): boolean => {
    if (tried && limitWrong(typed, limit.id) !== undefined) return true;
    const text = `${title} ${limit.words}`.toLowerCase();
    // A field that is being emptied stays until it is saved.
    const set = isSet(typed, limit.id) || isSet(stored, limit.id);
    return words.every((word) => text.includes(word)) && (!only || set);
  };
  return limitGroups
    .map((group) => ({ ...group, limits: group.limits.filter((limit) => fits(group.title, limit)) }))
    .filter(({ limits }) => limits.length > 0);
};

interface FilterProps {
  readonly filter: Filter;
  readonly onFilter: (filter: Filter) => void;
}

const FilterFields = ({ filter, onFilter }: FilterProps) => {
  const t = useText();
  return (
    <div className={styles.filter}>
      <SearchField
        label={t("own.limits.search")}
        value={filter.q}
        onChange={(q) => onFilter({ ...filter, q })}
      />
      <Checkbox
        size="md"
        label={t("own.limits.only")}
        checked={filter.only}
        onChange={(event) => onFilter({ ...filter, only: event.currentTarget.checked })}
      />
    </div>
  );
};

const Group = ({
  group: { title, limits },
  ...props
}: Pick<Props, "typed" | "tried" | "onChange"> & { readonly group: LimitGroup }) => (
  <section className={styles.group}>
    <h3>{title}</h3>
    {limits.map((limit) => (
      <LimitRow key={limit.id} limit={limit} {...props} onChange={props.onChange} />
    ))}
  </section>
);

/** The figures a firm may set, by the rules that judge by them. */
export const LimitsPanel = (props: Props) => {
  const t = useText();
  const [filter, setFilter] = useState<Filter>({ q: "", only: false });
  const { typed, tried, onChange } = props;
  const groups = shownGroups(props, filter);
  const set = limitGroups.flatMap(({ limits }) => limits).filter(({ id }) => isSet(typed, id)).length;
  return (
    <Panel
      title={t("own.limits")}
      hint={t(onChange ? "own.limits.hint" : "own.limits.hint.read", { set, all: ownLimitCount })}
    >
      <FilterFields filter={filter} onFilter={setFilter} />
      <p className={groups.length === 0 ? undefined : "only-read"} aria-live="polite">
        {groups.length === 0 && t(filter.only && set === 0 ? "own.limits.none.only" : "own.limits.none")}
      </p>
      {groups.map((group) => (
        <Group key={group.rule} {...{ group, typed, tried, onChange }} />
      ))}
    </Panel>
  );
};
