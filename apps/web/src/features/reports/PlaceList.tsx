import { Button } from "@mantine/core";
import { useState } from "react";
import { useText } from "../../strings/text";
import type { Place } from "../../entities/sheet/places";
import styles from "./SealPanel.module.css";
import type { SheetSearch } from "./sheet-search";

interface Props {
  readonly places: readonly Place[];
  readonly onGo: (change: SheetSearch) => void;
}

const nameOf = (place: Place): string =>
  [place.item.words.american, place.words].filter((part) => part !== "").join(", ");

const goTo = (place: Place, onGo: Props["onGo"]): void => {
  onGo({ section: place.item.section, items: undefined, open: place.key });
  requestAnimationFrame(() =>
    document.getElementById(`place-${place.key}`)?.scrollIntoView({ block: "center" }),
  );
};

/** Places to go to, the first few of them until all are asked for. */
export const PlaceList = ({ places, onGo }: Props) => {
  const t = useText();
  const [all, setAll] = useState(false);
  const shown = all ? places : places.slice(0, 8);
  return (
    <ul className={styles.list}>
      {shown.map((place) => (
        <li key={place.key}>
          <button type="button" onClick={() => goTo(place, onGo)}>
            {nameOf(place)}
          </button>
        </li>
      ))}
      {places.length > shown.length && (
        <li>
          <Button variant="subtle" size="compact-sm" onClick={() => setAll(true)}>
            {t("seal.more", { count: places.length - shown.length })}
          </Button>
        </li>
      )}
    </ul>
  );
};
