import type { Item, Sheet, Words } from "@evenhand/shared/sheet";

type Entry = {
  readonly item: Item;
  /** Names of the item itself, normalized. */
  readonly names: readonly string[];
  /** The words of each name. */
  readonly nameWords: readonly (readonly string[])[];
  /** Words of names, section and positions. */
  readonly around: readonly string[];
};

const indexes = new WeakMap<Sheet, readonly Entry[]>();

/** Lower case, accents off, everything but letters and digits a space. */
export function normalize(text: string): string {
  return text
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, " ")
    .trim();
}

const namesOf = ({ american, british, synonyms }: Words): string[] =>
  [american, ...(british === undefined ? [] : [british]), ...synonyms].map(normalize);

function buildIndex(sheet: Sheet): readonly Entry[] {
  const sections = new Map(sheet.sections.map(({ id, words }) => [id, namesOf(words)]));
  const positions = new Map(
    sheet.positionSets.map((set) => [set.id, set.positions.flatMap(({ words }) => namesOf(words))]),
  );
  return sheet.items.map((item) => {
    const names = [...new Set(namesOf(item.words))];
    const others = [
      ...(sections.get(item.section) ?? []),
      ...(item.positions === undefined ? [] : (positions.get(item.positions) ?? [])),
      normalize(item.id),
    ];
    return {
      item,
      names,
      nameWords: names.map((name) => name.split(" ")),
      around: [...new Set([...names, ...others].flatMap((name) => name.split(" ")))],
    };
  });
}

function indexOf(sheet: Sheet): readonly Entry[] {
  const known = indexes.get(sheet);
  if (known !== undefined) return known;
  const made = buildIndex(sheet);
  indexes.set(sheet, made);
  return made;
}

const beginAll = (tokens: readonly string[], within: readonly string[]) =>
  tokens.every((token) => within.some((word) => word.startsWith(token)));

/** 0 the name itself · 1 how a name begins · 2 words of one name · 3 words of name, section, positions · none. */
function closeness(
  { names, nameWords, around }: Entry,
  phrase: string,
  tokens: readonly string[],
): number | undefined {
  if (names.includes(phrase)) return 0;
  if (names.some((name) => name.startsWith(phrase))) return 1;
  if (nameWords.some((within) => beginAll(tokens, within))) return 2;
  return beginAll(tokens, around) ? 3 : undefined;
}

/**
 * Items by what people call them: American words, British ones, synonyms, then section and positions. Case, accents and hyphens
 * make no difference; every word typed must begin a word found. Closest first, in sheet order within the same closeness;
 * nothing typed finds nothing.
 *
 * @example
 * findItems(sheetVersion1, "Rev counter")[0]?.id; // "electrics.tachometer"
 */
export function findItems(sheet: Sheet, query: string): Item[] {
  const phrase = normalize(query);
  if (phrase === "") return [];
  const tokens = phrase.split(" ");
  return indexOf(sheet)
    .flatMap((entry) => {
      const rank = closeness(entry, phrase, tokens);
      return rank === undefined ? [] : [{ item: entry.item, rank }];
    })
    .sort((a, b) => a.rank - b.rank)
    .map(({ item }) => item);
}
