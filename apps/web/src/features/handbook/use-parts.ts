import { useQuery } from "@tanstack/react-query";
import { useText } from "../../strings/text";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { capital } from "../../entities/sheet/sheet-index";

export interface Part {
  readonly id: string;
  readonly words: string;
}

/** The parts whose dates the sheet asks for; `more` are parts another program entered, which stay. */
export const useParts = (more: readonly string[]): readonly Part[] => {
  const sheet = useQuery(sheetQuery("evenhand", 1)).data;
  const positions = sheet?.positionSets.get("dated-parts")?.positions ?? [];
  const known = positions.map(({ id, words }) => ({ id, words: capital(words.american) }));
  const others = more.filter((id) => id !== "" && id !== BUILD && known.every((part) => part.id !== id));
  return [...known, ...[...new Set(others)].map((id) => ({ id, words: id }))];
};

/** What the handbook calls the date on the body tag. */
export const BUILD = "build";

/** The same with the body tag, which has a date but is no part made in small numbers. */
export const useDatedParts = (more: readonly string[]): readonly Part[] => {
  const t = useText();
  return [{ id: BUILD, words: t("own.dates.part.build") }, ...useParts(more)];
};
