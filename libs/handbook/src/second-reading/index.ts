import { listed } from "@evenhand/message/listed";
import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import type { CodeSystem } from "@evenhand/shared/sheet";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { isSameAsNormalized, normalizeCode } from "../code-text/index.ts";
import { findRule } from "../rules/index.ts";
import { sentence } from "../sentence/index.ts";
import { answeredBy, findAt } from "../view/indexed-report.ts";
import type { Side, View } from "../view/index.ts";

type Reports = View["reports"];
/** Two reports, and the sheet that says of what system a code is. */
type Read = { readonly reports: Reports; readonly sheet: Pick<CompiledSheet, "items"> };

/** What a code is taken for that one person read once, whatever the rule. */
export const READ_AGAIN = "read-again";

type Code = { readonly system: CodeSystem; readonly text: string };

const codeAt = ({ reports, sheet }: Read, { side, item, position }: EntryReference): Code | undefined => {
  const answer = findAt(answeredBy(reports[side], item), position)?.answer;
  if (answer?.kind !== "code") return undefined;
  return { system: sheet.items.get(item)?.item.code?.system ?? "text", text: answer.text };
};

const normalized = ({ system, text }: Code): string => normalizeCode(system, text);

/** One may give the whole code and the other part of it: a stamp's end, a part number without its suffix. */
const isAlike = (one: Code, other: Code): boolean => {
  const own = { text: one.text, normalized: normalized(one) };
  const theirs = { text: other.text, normalized: normalized(other) };
  return (
    isSameAsNormalized(one.system, own, theirs) ||
    own.normalized.includes(theirs.normalized) ||
    theirs.normalized.includes(own.normalized)
  );
};

const TIRE_NUMBER = "wheels.tire-identification";

const otherSide = (side: Side): Side => (side === "a" ? "b" : "a");

/**
 * Codes a break rests on that nobody read alike a second time. Where nobody is accused a code that one person alone read stands: only
 * another reading of the same place speaks against it. The age of a tire can hurt somebody and waits for no second reading either.
 */
const unconfirmed = ({ reads, claim }: CrossCheck, both: Read): EntryReference[] =>
  reads.filter((read) => {
    const code = codeAt(both, read);
    const other = codeAt(both, { ...read, side: otherSide(read.side) });
    if (code === undefined) return false;
    return other === undefined ? claim !== null && read.item !== TIRE_NUMBER : !isAlike(code, other);
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

/** Codes as they were written, each once however often it was. */
const asWritten = (open: readonly EntryReference[], both: Read): string[] => {
  const codes = open.flatMap((read) => codeAt(both, read) ?? []);
  return [...new Map(codes.map((code) => [normalized(code), code.text.trim()])).values()];
};

/** What the break would have said: a sentence, made where somebody reads it. */
const wordsFor = (check: CrossCheck, codes: string): Record<string, string> => ({
  get said() {
    return sentence(check);
  },
  codes,
});

const asked = (check: CrossCheck, open: readonly EntryReference[], both: Read): CrossCheck => ({
  ...check,
  verdict: "cannot-tell",
  reason: READ_AGAIN,
  words: wordsFor(check, listed(asWritten(open, both))),
  bad: [],
  decides: [],
});

/**
 * A break that accuses rests on codes that both people read, or on two codes that each speak against the claim; else it stays
 * undecided and asks for a second reading.
 *
 * @param checks of two reports; the rules that say it themselves are left as they are
 * @example withSecondReadings(checks, { a, b }, sheet).filter(({ reason }) => reason === "read-again").length // 1
 */
export const withSecondReadings = (
  checks: readonly CrossCheck[],
  reports: Reports,
  sheet: Pick<CompiledSheet, "items">,
): CrossCheck[] => {
  const both: Read = { reports, sheet };
  const resting = checks.flatMap((check) =>
    check.verdict === "breaks" && check.strength === "contradicts" && !saysItself(check)
      ? [[check, unconfirmed(check, both)] as const]
      : [],
  );
  const open = new Map(resting);
  return checks.map((check) => {
    const codes = open.get(check) ?? [];
    return codes.length === 0 || isBorneOut(check, codes, resting) ? check : asked(check, codes, both);
  });
};
