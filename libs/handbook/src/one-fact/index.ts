import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import { SEVERITIES, severityRank } from "@evenhand/shared/severity";

/** Rules that read the same cylinders, by level, by spread and by where the air goes: however many break, the engine is worn once. */
const ENGINE_WEAR: ReadonlySet<string> = new Set([
  "rebuilt-engine",
  "compression",
  "leak-down",
  "cylinder-story",
]);

const placeOf = ({ side, item, position }: EntryReference): string => `${side} ${item} ${position}`;

/** What a break is about: the claim that falls; of an engine's wear the readings it rests on. */
const factsOf = ({ rule, claim, reads }: CrossCheck): string[] => [
  ...(claim === null ? [] : [`claim ${placeOf(claim)}`]),
  ...(ENGINE_WEAR.has(rule) ? reads.map((read) => `read ${placeOf(read)}`) : []),
];

const rank = ({ severity }: CrossCheck): number =>
  severity === null ? SEVERITIES.length : severityRank(severity);

/** The gravest speaks, of those a contradiction before a hint, then what rests on most readings. */
const speaksBefore = (one: CrossCheck, other: CrossCheck): number =>
  rank(one) - rank(other) ||
  Number(one.strength !== "contradicts") - Number(other.strength !== "contradicts") ||
  other.reads.length - one.reads.length;

/**
 * One fact is one line, however many rules break on it: turns, teeth and the road on one claimed ratio, compression by its level and its
 * spread on one engine, a date and a number on one claim. The gravest speaks; the others stand under it, by its index.
 *
 * @example oneFact(checks).filter(({ under }) => under !== undefined).length // 2: turns and road under the combined ratio
 */
export const oneFact = (checks: readonly CrossCheck[]): CrossCheck[] => {
  const broken = checks.flatMap((check, index) => (check.verdict === "breaks" ? [{ check, index }] : []));
  const speakers = new Map<string, number>();
  const under = new Map<number, number>();
  for (const { check, index } of broken.toSorted((one, other) => speaksBefore(one.check, other.check))) {
    const facts = factsOf(check);
    const speaker = facts.map((fact) => speakers.get(fact)).find((known) => known !== undefined);
    if (speaker !== undefined) under.set(index, speaker);
    for (const fact of facts) if (!speakers.has(fact)) speakers.set(fact, speaker ?? index);
  }
  return checks.map((check, index) => {
    const speaker = under.get(index);
    return speaker === undefined ? check : { ...check, under: speaker };
  });
};
