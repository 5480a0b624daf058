import { useText } from "../../strings/text";
import { Facts } from "../../ui/Page";
import { withUnit } from "../../entities/sheet/answer-text";
import { figureFields, figureUnits, listFields, patternFields, type MakerTyped } from "./maker-form";
import styles from "./OwnFigures.module.css";
import { useDatedParts, type Part } from "./use-parts";
import { spelled } from "../../entities/sheet/sheet-index";

const wordsOf = (parts: readonly Part[], id: string): string =>
  parts.find((part) => part.id === id)?.words ?? spelled(id);

/** What an entry says, as it stands in the fields. */
export const MakerFacts = ({ entry }: { readonly entry: MakerTyped }) => {
  const t = useText();
  const { text, cam, neverStamped, lowVolumeParts, dateForms } = entry;
  const parts = useDatedParts([...lowVolumeParts, ...dateForms.map(({ part }) => part)]);
  const rows: (readonly [string, string])[] = [
    ["own.field.source", text.source] as const,
    ...listFields.map((field) => [`own.field.${field}`, text[field]] as const),
    ...figureFields.map(
      (field) =>
        [
          `own.field.${field}`,
          text[field].trim() === "" ? "" : withUnit(text[field], figureUnits[field]),
        ] as const,
    ),
    ["own.cam", cam === "" ? "" : t(`own.cam.${cam}`)] as const,
    ...patternFields.map((field) => [`own.field.${field}`, text[field]] as const),
    ["own.never-stamped", neverStamped.map((unit) => t(`own.unit.${unit}`)).join(", ")] as const,
    ...dateForms.map(
      ({ part, form, from, to }) =>
        ["own.maker.dates", t("own.dates.line", { part: wordsOf(parts, part), form, from, to })] as const,
    ),
    ["own.low-volume", lowVolumeParts.map((id) => wordsOf(parts, id)).join(", ")] as const,
  ].flatMap(([id, value]) => (value.trim() === "" ? [] : [[t(id), value] as const]));
  return (
    <div className={styles.facts}>
      <Facts rows={rows} />
    </div>
  );
};
