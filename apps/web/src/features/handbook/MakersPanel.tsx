import { Button } from "@mantine/core";
import { useState } from "react";
import { useText } from "../../strings/text";
import { Empty, Panel } from "../../ui/Page";
import { SearchField } from "../../ui/SearchField";
import { newMaker, type MakerTyped } from "./maker-form";
import { problemsOfMakers } from "./maker-problems";
import { MakerItem } from "./MakerItem";

interface Props {
  readonly typed: readonly MakerTyped[];
  readonly tried: boolean;
  /** Left out where they are only to be read. */
  readonly onChange?: (typed: readonly MakerTyped[]) => void;
}

/** A shorter list is read faster than searched. */
const SEARCHED_FROM = 6;

const searchWords = ({ text }: MakerTyped): string =>
  [text.make, text.model, text.fromYear, text.toYear, text.source].join(" ").toLowerCase();

/** The entries a search leaves; one just added, or wrong once saving was tried, is never hidden. */
const useShown = ({ typed, tried }: Props) => {
  const [q, setQ] = useState("");
  const [added, setAdded] = useState<readonly string[]>([]);
  const problems = problemsOfMakers(typed);
  const words = q.trim().toLowerCase().split(/\s+/);
  const shown = typed.filter(
    (entry) =>
      added.includes(entry.key) ||
      (tried && problems.has(entry.key)) ||
      words.every((word) => searchWords(entry).includes(word)),
  );
  return { shown, problems, added, q, setQ, keepShown: (key: string) => setAdded([...added, key]) };
};

interface ListOf {
  readonly list: ReturnType<typeof useShown>;
}

const Makers = ({ typed, tried, onChange, list: { shown, problems, added } }: Props & ListOf) => (
  <>
    {shown.map((entry) => (
      <MakerItem
        key={entry.key}
        entry={entry}
        problems={problems.get(entry.key)}
        tried={tried}
        added={added.includes(entry.key)}
        onChange={
          onChange && ((next) => onChange(typed.map((other) => (other.key === entry.key ? next : other))))
        }
      />
    ))}
  </>
);

const AddMaker = ({ onAdd }: { readonly onAdd: (entry: MakerTyped) => void }) => {
  const t = useText();
  return (
    <div>
      <Button variant="default" size="md" onClick={() => onAdd(newMaker())}>
        {t("own.makers.add")}
      </Button>
    </div>
  );
};

/** What a firm knows of makes and models. */
export const MakersPanel = (props: Props) => {
  const t = useText();
  const { typed, onChange } = props;
  const list = useShown(props);
  const add = (entry: MakerTyped): void => {
    list.keepShown(entry.key);
    onChange?.([...typed, entry]);
  };
  return (
    <Panel title={t("own.makers")} hint={t("own.makers.hint")}>
      {typed.length >= SEARCHED_FROM && (
        <SearchField label={t("own.makers.find")} value={list.q} onChange={list.setQ} />
      )}
      {typed.length === 0 && <Empty title={t("own.makers.none")} />}
      {typed.length > 0 && list.shown.length === 0 && <p>{t("own.makers.found-none")}</p>}
      <Makers {...props} list={list} />
      {onChange && <AddMaker onAdd={add} />}
    </Panel>
  );
};
