import type { Finding } from "@evenhand/shared/finding";
import type { WithheldReport } from "@evenhand/shared/http/reports";
import type { Report } from "@evenhand/shared/report";
import { placeKey, placesFor, type Place } from "../../entities/sheet/places";
import { searchWords, type SheetIndex } from "../../entities/sheet/sheet-index";

/** One line of a report as it is read: what is said, that it is withheld, or that nothing is said. */
export interface Line extends Omit<Place, "words"> {
  readonly place: string;
  readonly finding: Finding | null;
  readonly withheld: boolean;
  readonly words: string;
}

export const linesOf = (index: SheetIndex, document: Report | WithheldReport): readonly Line[] => {
  const findings = new Map(document.findings.map((one) => [placeKey(one.item, one.position), one]));
  const withheld = new Set(
    "withheld" in document ? document.withheld.map((one) => placeKey(one.item, one.position)) : [],
  );
  return placesFor(index, document.vehicle.form).map(({ words, ...place }) => ({
    ...place,
    place: words,
    finding: findings.get(place.key) ?? null,
    withheld: withheld.has(place.key),
    words: `${searchWords(place.item.words)} ${words.toLowerCase()}`,
  }));
};

export type LinesShown = "all" | "answered" | "silent";

/** Is a line among those looked for? Every word of the search has to be in it. */
export const matches = (line: Line, show: LinesShown, q: string): boolean =>
  (show === "all" || (show === "silent") === (line.finding === null && !line.withheld)) &&
  q
    .toLowerCase()
    .split(/\s+/)
    .every((word) => line.words.includes(word));
