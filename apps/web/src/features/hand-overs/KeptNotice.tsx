import { positionWords, type SheetIndex } from "../../entities/sheet/sheet-index";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import type { Keeping } from "./sheet-keeper";

/** Where what is typed stands by now, and what became of what this device had. */
export const KeptNotice = ({ kept, found }: Pick<Keeping, "kept" | "found">) => {
  const t = useText();
  const before = found === "nothing" ? null : <p>{t(`carry.found.${found}`)}</p>;
  return (
    <Notice kind={kept === "not-kept" ? "caution" : "note"} title={t(`carry.kept.${kept}`)}>
      <p>{t(`carry.kept.${kept}.what`)}</p>
      {before}
    </Notice>
  );
};

interface Props {
  readonly keys: readonly string[];
  readonly index: SheetIndex;
}

/** Places that would not be sent as they stand. */
export const Unsendable = ({ keys, index }: Props) => {
  const t = useText();
  if (keys.length === 0) return null;
  const named = keys.map((key) => {
    const [id = "", position = ""] = key.split(" ");
    const item = index.items.get(id);
    if (item === undefined) return key;
    return position === "" ? item.words.american : positionWords(index, item, position);
  });
  return (
    <Notice kind="note" title={t("carry.unsendable")}>
      <ul>
        {named.map((name, at) => (
          <li key={keys[at]}>{name}</li>
        ))}
      </ul>
    </Notice>
  );
};
