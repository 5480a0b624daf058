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

/** What a firm knows of makes and models. */
export const MakersPanel = ({ typed, tried, onChange }: Props) => {
  const t = useText();
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
  const add = (): void => {
    const entry = newMaker();
    setAdded([...added, entry.key]);
    onChange?.([...typed, entry]);
  };
  return (
    <Panel title={t("own.makers")} hint={t("own.makers.hint")}>
      {typed.length >= SEARCHED_FROM && (
        <SearchField label={t("own.makers.find")} value={q} onChange={setQ} />
      )}
      {typed.length === 0 && <Empty title={t("own.makers.none")} />}
      {typed.length > 0 && shown.length === 0 && <p>{t("own.makers.found-none")}</p>}
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
      {onChange && (
        <div>
          <Button variant="default" size="md" onClick={add}>
            {t("own.makers.add")}
          </Button>
        </div>
      )}
    </Panel>
  );
};
