import type { ReportKind } from "@evenhand/shared/report";
import type { Section } from "@evenhand/shared/sheet";
import type { KeptFinding } from "../../offline/store";
import { isAskedOf, type Place } from "../../entities/sheet/places";
import type { SheetSearch } from "./sheet-search";

type Findings = ReadonlyMap<string, Pick<KeptFinding, "finding">>;

/** The lines of a sheet. What was answered before it was asked elsewhere still stands, and can be taken back. */
export const sheetPlaces = (
  places: readonly Place[],
  kind: ReportKind,
  findings: Findings,
): readonly Place[] => places.filter(({ item, key }) => isAskedOf(item, kind) || findings.has(key));

export interface ItemGroup {
  readonly item: Place["item"];
  readonly places: readonly Place[];
}

/** Each item once, with all its places, in their order. */
export const byItem = (places: readonly Place[]): readonly ItemGroup[] =>
  [...Map.groupBy(places, ({ item }) => item.id).values()].flatMap((group) =>
    group[0] === undefined ? [] : [{ item: group[0].item, places: group }],
  );

/** A section in the list of them, with how much of it is answered. */
export interface SectionEntry {
  readonly section: Section;
  readonly done: number;
  readonly all: number;
}

export interface SheetView {
  /** Sections with a line. */
  readonly entries: readonly SectionEntry[];
  readonly current: Section | undefined;
  /** Lines shown of the current section. */
  readonly here: readonly Place[];
  readonly before: Section | undefined;
  readonly after: Section | undefined;
  readonly isFirst: boolean;
}

interface Shown {
  readonly sections: readonly Section[];
  readonly places: readonly Place[];
  readonly findings: Findings;
  readonly search: Pick<SheetSearch, "section" | "items">;
  /** Lines that were answered when the list was made: only these leave it, so that nothing vanishes under the finger. */
  readonly answeredBefore: ReadonlySet<string>;
}

const entryOf = (section: Section, { places, findings, search }: Shown): SectionEntry => {
  const list = places.filter(
    ({ item }) => item.section === section.id && (search.items !== "core" || item.core),
  );
  return { section, done: list.filter(({ key }) => findings.get(key)?.finding).length, all: list.length };
};

const isWanted = (place: Place, { search, answeredBefore }: Shown): boolean => {
  if (search.items === "core") return place.item.core;
  return search.items !== "open" || !answeredBefore.has(place.key);
};

/** What of the sheet is shown, and what stands before and after it. */
export const sheetView = (shown: Shown): SheetView => {
  const { sections, places, search } = shown;
  const filled = sections.filter(({ id }) => places.some(({ item }) => item.section === id));
  const at = Math.max(
    0,
    filled.findIndex(({ id }) => id === search.section),
  );
  const current = filled[at];
  return {
    entries: filled.map((section) => entryOf(section, shown)),
    current,
    here: places.filter((place) => place.item.section === current?.id && isWanted(place, shown)),
    before: filled[at - 1],
    after: filled[at + 1],
    isFirst: at === 0,
  };
};

/** What a person does to move about the sheet. */
export type SheetMove =
  | { readonly type: "section"; readonly section: string }
  | { readonly type: "items"; readonly items: string }
  | { readonly type: "walk" }
  | { readonly type: "open"; readonly place: string | undefined }
  /** On from a line to the one below it; from the last it closes. */
  | { readonly type: "next"; readonly from: string };

/** What changes of the address on a move. */
export const searchAfter = ({ here }: Pick<SheetView, "here">, move: SheetMove): SheetSearch => {
  switch (move.type) {
    case "section":
      return { section: move.section, open: undefined };
    case "items":
      return { items: move.items === "core" || move.items === "open" ? move.items : undefined };
    case "walk":
      return { view: "stages", section: undefined, open: undefined };
    case "open":
      return { open: move.place };
    case "next":
      return { open: here[here.findIndex(({ key }) => key === move.from) + 1]?.key };
  }
};
