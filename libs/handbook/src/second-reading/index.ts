import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import { normalizeNumber } from "../identifier-text/index.ts";
import { findRule } from "../rules/index.ts";
import { sentence } from "../sentence/index.ts";
import type { Side, View } from "../view/index.ts";

type Reports = View["reports"];

/** What a code is taken for that one person read once, whatever the rule. */
export const READ_AGAIN = "read-again";

const textAt = (reports: Reports, { side, item, position }: EntryReference): string | undefined => {
  const answer = reports[side]?.index.get(item)?.get(position)?.answer;
  return answer?.kind === "code" ? normalizeNumber(answer.text) : undefined;
};

/** One may give the whole code and the other its end: a tire's date alone, a part number without its suffix. */
const isAlike = (one: string, other: string): boolean => one.includes(other) || other.includes(one);

const TIRE_NUMBER = "wheels.tire-identification";

const otherSide = (side: Side): Side => (side === "a" ? "b" : "a");

/**
 * Codes a break rests on that nobody read alike a second time. Where nobody is accused a code that one person alone read stands: only
 * another reading of the same place speaks against it. The age of a tire can hurt somebody and waits for no second reading either.
 */
const unconfirmed = ({ reads, claim }: CrossCheck, reports: Reports): EntryReference[] =>
  reads.filter((read) => {
    const text = textAt(reports, read);
    const other = textAt(reports, { ...read, side: otherSide(read.side) });
    if (text === undefined) return false;
    return other === undefined ? claim !== null && read.item !== TIRE_NUMBER : !isAlike(text, other);
  });

const placeOf = ({ item, position }: EntryReference): string => `${item} ${position}`;
/** Tires called new at every corner are one claim. */
const claimOf = ({ claim }: CrossCheck): string => claim?.item ?? "";

/** Rules that say for themselves what a number read once comes to. */
const saysItself = ({ rule }: CrossCheck): boolean =>
  rule === "vin-reading" || Object.hasOwn(findRule(rule)?.outcomes ?? {}, READ_AGAIN);

/** A slip explains one code and not two: another break of the same claim that rests on other codes bears this one out. */
const isBorneOut = (
  check: CrossCheck,
  open: readonly EntryReference[],
  others: readonly (readonly [CrossCheck, readonly EntryReference[]])[],
): boolean => {
  const own = new Set(open.map(placeOf));
  return others.some(
    ([other, theirs]) =>
      other !== check &&
      claimOf(check) !== "" &&
      claimOf(other) === claimOf(check) &&
      !theirs.some((place) => own.has(placeOf(place))),
  );
};

const asked = (check: CrossCheck, open: readonly EntryReference[], reports: Reports): CrossCheck => ({
  ...check,
  verdict: "cannot-tell",
  reason: READ_AGAIN,
  words: {
    said: sentence(check),
    codes: [...new Set(open.map((read) => textAt(reports, read) ?? ""))].join(", "),
  },
  bad: [],
  decides: [],
});

/**
 * A break that accuses rests on codes that both people read, or on two codes that each speak against the claim; else it stays
 * undecided and asks for a second reading.
 *
 * @param checks of two reports; the rules that say it themselves are left as they are
 * @example withSecondReadings(checks, { a, b }).filter(({ reason }) => reason === "read-again").length // 1
 */
export const withSecondReadings = (checks: readonly CrossCheck[], reports: Reports): CrossCheck[] => {
  const resting = checks.flatMap((check) =>
    check.verdict === "breaks" && check.strength === "contradicts" && !saysItself(check)
      ? [[check, unconfirmed(check, reports)] as const]
      : [],
  );
  const open = new Map(resting);
  return checks.map((check) => {
    const codes = open.get(check) ?? [];
    return codes.length === 0 || isBorneOut(check, codes, resting) ? check : asked(check, codes, reports);
  });
};
