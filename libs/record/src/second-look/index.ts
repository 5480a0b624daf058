import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import { canonicalJson } from "../canonical-json/index.ts";
import { type Place, placeKey } from "../place/index.ts";

/** Parting places are named up to this many, the most pressing first: a second look takes minutes each. */
export const MOST_PARTING = 20;
/** Never fewer than this many places are named that do not part, and half as many as part. */
export const LEAST_DECOYS = 3;

/** Places at which both said something: a second look can change nothing of the rest. */
const isAnswered = ({ finding }: Entry): boolean => finding.a !== null && finding.b !== null;
const parts = (entry: Entry): boolean =>
  isAnswered(entry) && (entry.outcome === "differ" || entry.outcome === "doubtful");
const isSame = (entry: Entry): boolean =>
  isAnswered(entry) && (entry.outcome === "agree" || entry.outcome === "consistent");

const uniquePlaces = (entries: readonly Entry[]): Place[] => [
  ...new Map(
    entries.map(({ item, position }) => [placeKey({ item, position }), { item, position }]),
  ).values(),
];

/** Lines of the order first, as pressing as they are; parting lines found better stand in no order and come last. */
const partingPlaces = ({ entries, order }: Pick<Comparison, "entries" | "order">): Place[] => {
  const pressing = order.flatMap((index) => entries[index] ?? []);
  return uniquePlaces([...pressing, ...entries].filter(parts));
};

/**
 * The places an inspector is asked to look at again before sealing: those where the report parts from the statement, either way,
 * mixed with some where both say the same, in the order of their names. It says where, never how; with places that do not part
 * among them, being named tells nothing for sure, and being asked tells nothing at all.
 *
 * @param hashOf orders the places that do not part by chance: a hash of the text and of something the inspector does not know, so
 *   that nobody can tell which were taken by chance; the same for the same report
 * @example secondLookPlaces(analyze(statement, draft, sheet), (text) => sha256(secret + text)) // [{ item: "body.…", position: "…" }, …]
 */
export const secondLookPlaces = (
  comparison: Pick<Comparison, "entries" | "order">,
  hashOf: (text: string) => string,
): Place[] => {
  const parting = partingPlaces(comparison);
  const apart = new Set(parting.map(placeKey));
  const named = parting.slice(0, MOST_PARTING);
  const same = uniquePlaces(comparison.entries.filter(isSame))
    .filter((place) => !apart.has(placeKey(place)))
    .map((place) => ({ place, by: hashOf(placeKey(place)) }))
    .toSorted((one, other) => (one.by < other.by ? -1 : 1))
    .map(({ place }) => place);
  const decoys = same.slice(0, Math.max(LEAST_DECOYS, Math.ceil(named.length / 2)));
  return [...named, ...decoys].toSorted((one, other) => (placeKey(one) < placeKey(other) ? -1 : 1));
};

/**
 * What stands at a place that was asked to be looked at again: the new answer, and the one that was given first beside it. A
 * change that is no second look (a note, an instrument) leaves it as it was.
 *
 * @param before what stood there
 * @param next as it is to stand now; a `look` in it says that it was looked at again, also where the answer is the same
 * @example lookedAgain(horn("no"), { ...horn("no"), look: "second" }).first // { answer: { kind: "working", value: "no" } }
 */
export const lookedAgain = (before: Finding, next: Finding): Finding => {
  const { look, first: _claimed, ...finding } = next;
  const changed = canonicalJson(before.answer) !== canonicalJson(next.answer);
  if (before.look === undefined && look === undefined && !changed) return finding;
  const { answer, blind, time } = before;
  const first = before.first ?? {
    answer,
    ...(blind === undefined ? {} : { blind }),
    ...(time === undefined ? {} : { time }),
  };
  return { ...finding, look: "second", first };
};

/** A finding as one look gave it: nobody says by themselves that it was a second one. */
export const asOneLook = ({ look: _look, first: _first, ...finding }: Finding): Finding => finding;
