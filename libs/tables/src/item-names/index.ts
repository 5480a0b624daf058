import { expandPattern } from "@evenhand/lexicon/expand-pattern";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import { labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import { written } from "./written.ts";

/** A name of items: its words, what it may mean, the likeliest first, and its places where the name itself says them. */
type Name = {
  readonly stems: readonly string[];
  readonly items: readonly string[];
  readonly at?: readonly string[];
};

/** An item that a name may mean, and how well the two fit, 0 to 1. */
export type Candidate = {
  readonly item: Item;
  readonly fit: number;
  /** How much of what is written the name accounts for: of `Fog lights` less than half is lamps. */
  readonly share: number;
  readonly at?: readonly string[];
};

type Index = {
  readonly names: readonly Name[];
  readonly byStem: ReadonlyMap<string, readonly number[]>;
  readonly weights: ReadonlyMap<string, number>;
  readonly items: ReadonlyMap<string, Item>;
};

const namesOfSheet = (sheet: Sheet): Name[] =>
  sheet.items.flatMap((item) =>
    [item.words.american, item.words.british ?? "", ...item.words.synonyms]
      .filter((name) => name !== "")
      .map((name) => ({ stems: [...new Set(labelOf(name).stems)], items: [item.id] })),
  );

const namesOfPatterns = (
  subjects: readonly {
    readonly words: readonly string[];
    readonly items: readonly string[];
    readonly at?: readonly string[];
  }[],
): Name[] =>
  subjects.flatMap(({ words, items, at }) =>
    words.flatMap(expandPattern).map((phrase) => ({
      stems: [...new Set(labelOf(phrase.join(" ")).stems)],
      items,
      ...(at === undefined ? {} : { at }),
    })),
  );

const SAYS_LITTLE = 0.15;

/** Words of condition say little of what is meant: rust in a floor is asked of the floor. */
const OF_CONDITION: ReadonlySet<string> = new Set([
  "rust",
  "rusty",
  "corrosion",
  "torn",
  "tear",
  "stain",
  "perished",
  "cracked",
  "corroded",
  "damage",
  "dent",
  "hole",
  "crack",
  "present",
  "fitted",
  "included",
  "supplied",
  "operation",
  "function",
  "functioning",
  "functional",
  "mechanism",
  "status",
  "evidence",
  "sign",
  "performance",
  "overall",
  "appearance",
  "existing",
  "out",
  "missing",
  "broken",
  "faulty",
  "weep",
  "weeping",
  "drip",
  "dripping",
  "seep",
  "defective",
  "edge",
  "lip",
]);

/** A word that stands in few names says more; one in none says that something else is meant. */
const weigh = (names: readonly Name[]): Map<string, number> => {
  const counts = new Map<string, number>();
  for (const { stems } of names) for (const stem of stems) counts.set(stem, (counts.get(stem) ?? 0) + 1);
  return new Map(
    [...counts].map(([stem, count]) => [
      stem,
      OF_CONDITION.has(stem) ? SAYS_LITTLE : 1 / (1 + Math.log2(1 + count) / 4),
    ]),
  );
};

/** What a part's name means only beside a word of its own is not asked for by the name alone: a soft top is no motor of it. */
const spoken = lexiconVersion1.subjects.map((subject) => ({
  ...subject,
  items: subject.items.filter(
    (id, at) =>
      at === 0 || !/^(?:electrics\.power-top|gaps\.bolts-disturbed|identity\.title-kind)$/u.test(id),
  ),
}));

const indexes = new WeakMap<Sheet, Index>();

const indexOf = (sheet: Sheet): Index => {
  const known = indexes.get(sheet);
  if (known !== undefined) return known;
  const names = [...namesOfPatterns(written), ...namesOfSheet(sheet), ...namesOfPatterns(spoken)].filter(
    ({ stems }) => stems.length > 0,
  );
  const byStem = new Map<string, number[]>();
  for (const [at, { stems }] of names.entries())
    for (const stem of stems) byStem.set(stem, [...(byStem.get(stem) ?? []), at]);
  const items = new Map(sheet.items.map((item) => [item.id, item]));
  const made = { names, byStem, weights: weigh(names), items };
  indexes.set(sheet, made);
  return made;
};

/** What a word nobody uses weighs: it may be a maker's term, so it does not undo a name, and takes from its fit. */
const UNKNOWN = 0.8;
const unknownWeight = (stem: string): number => (OF_CONDITION.has(stem) ? SAYS_LITTLE : UNKNOWN);

const weightIn = (weights: ReadonlyMap<string, number>, stems: Iterable<string>): number => {
  let sum = 0;
  for (const stem of stems) sum += weights.get(stem) ?? unknownWeight(stem);
  return sum;
};

type Fit = { readonly fit: number; readonly share: number };
const NO_FIT: Fit = { fit: 0, share: 0 };

/** How well a name fits: how much of the name is said, here or around, and how much of what is said here is the name. */
const fitOf = (
  name: Name,
  own: ReadonlySet<string>,
  core: readonly string[],
  around: ReadonlySet<string>,
  index: Index,
): Fit => {
  let [said, here] = [0, 0];
  for (const stem of name.stems) {
    const weight = index.weights.get(stem) ?? unknownWeight(stem);
    if (own.has(stem)) {
      said += weight;
      here += 1;
    } else if (around.has(stem)) said += 0.85 * weight;
  }
  if (here === 0) return NO_FIT;
  const ofName = said / weightIn(index.weights, name.stems);
  const stems = new Set(name.stems);
  const matched = core.filter((stem) => stems.has(stem));
  const ofLabel = core.length === 0 ? 0.6 : weightIn(index.weights, matched) / weightIn(index.weights, core);
  // Of two names that are said whole, the one of more words says more.
  const passedOver = ["inner", "outer", "top", "bottom"].some((stem) => own.has(stem) && !stems.has(stem));
  const fit = ofName ** 2 * (0.3 + 0.7 * ofLabel) * (1 + 0.02 * here) * (passedOver ? 0.9 : 1);
  return { fit, share: ofLabel };
};

const MOST = 12;

/** The same names stand in row after row. */
const answered = new WeakMap<Sheet, Map<string, readonly Candidate[]>>();

const search = (index: Index, label: Label, around: readonly string[]): Candidate[] => {
  const own = new Set(label.stems);
  const context = new Set(around);
  const best = new Map<string, Candidate>();
  const asked = new Set(label.stems.flatMap((stem) => index.byStem.get(stem) ?? []));
  for (const at of asked) {
    const name = index.names[at];
    if (name === undefined) continue;
    const { fit, share } = fitOf(name, own, label.core, context, index);
    if (fit < 0.2) continue;
    for (const [rank, id] of name.items.entries()) {
      const item = index.items.get(id);
      const ranked = fit * (1 - 0.03 * Math.min(rank, 6));
      if (item === undefined || item.sameAs !== undefined || ranked <= (best.get(id)?.fit ?? 0)) continue;
      best.set(id, { item, share, fit: ranked, ...(name.at === undefined ? {} : { at: name.at }) });
    }
  }
  return [...best.values()].toSorted((a, b) => b.fit - a.fit).slice(0, MOST);
};

/**
 * The items a name in a sheet may mean, best first, by the sheet's own words, the lexicon's, and what inspectors write short.
 *
 * @param around words of the headings above, which complete a name (`Noise` under `Engine`)
 */
export const itemsNamed = (sheet: Sheet, label: Label, around: readonly string[]): readonly Candidate[] => {
  const known = answered.get(sheet) ?? new Map<string, readonly Candidate[]>();
  answered.set(sheet, known);
  const key = `${label.text}\n${around.join(" ")}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  if (known.size > 4_000) known.clear();
  const found = search(indexOf(sheet), label, around);
  known.set(key, found);
  return found;
};
