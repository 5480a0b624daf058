import { Radio } from "@mantine/core";
import type { Item } from "@evenhand/shared/sheet";
import { useState } from "react";
import { useText } from "../../strings/text";
import { ChoiceField, TextField } from "../../ui/Fields";
import type { Place } from "../../entities/sheet/places";
import { capital, type SheetIndex } from "../../entities/sheet/sheet-index";
import { chooseItem, itemsFound, placesOf, type PlaceChoice } from "./place-choice";
import styles from "./Questions.module.css";

const SHOWN = 8;

interface FoundProps {
  readonly items: readonly Item[];
  readonly index: SheetIndex;
  readonly value: string;
  readonly onChange: (item: string) => void;
}

/** The items found, each with the section it stands in. */
const FoundItems = ({ items, index, value, onChange }: FoundProps) => {
  const t = useText();
  return (
    <Radio.Group label={t("questions.item")} value={value} onChange={onChange}>
      <div className={styles.form} style={{ gap: "0.6rem", paddingTop: "0.5rem" }}>
        {items.slice(0, SHOWN).map((item) => (
          <Radio
            key={item.id}
            size="md"
            value={item.id}
            label={capital(item.words.american)}
            description={capital(index.sections.get(item.section)?.words.american ?? "")}
          />
        ))}
      </div>
    </Radio.Group>
  );
};

interface PositionProps {
  readonly places: readonly Place[];
  readonly value: string;
  readonly onChange: (position: string) => void;
}

const PositionField = ({ places, value, onChange }: PositionProps) => {
  const t = useText();
  return (
    <ChoiceField
      label={t("questions.position")}
      value={value}
      data={places.map(({ position, words }) => ({ value: position, label: words }))}
      onChange={onChange}
    />
  );
};

interface Props {
  readonly places: readonly Place[];
  readonly index: SheetIndex;
  readonly value: PlaceChoice;
  readonly onChange: (value: PlaceChoice) => void;
}

/** Finds an item by any word for it, then the position on it. */
export const ItemChooser = ({ places, index, value, onChange }: Props) => {
  const t = useText();
  const [typed, setTyped] = useState("");
  const found = itemsFound(places, typed, value.item);
  const positions = placesOf(places, value.item);
  const choose = (item: string): void => onChange(chooseItem(places, item));
  return (
    <>
      <TextField
        type="search"
        label={t("questions.item.search")}
        description={t("questions.item.hint")}
        value={typed}
        onChange={setTyped}
      />
      {typed.trim() !== "" && found.length === 0 && <p aria-live="polite">{t("questions.item.none")}</p>}
      {found.length > 0 && <FoundItems items={found} index={index} value={value.item} onChange={choose} />}
      {positions.length > 1 && (
        <PositionField
          places={positions}
          value={value.position}
          onChange={(position) => onChange({ ...value, position })}
        />
      )}
    </>
  );
};
