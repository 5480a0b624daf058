import type { RuleResult } from "@evenhand/shared/cross-check";
import { misreading, normalizeNumber, normalizeVin } from "../identifier-text/index.ts";
import { partialVinRecord } from "./record.ts";

export type PartialVinInput = {
  /** What is stamped; `"never-stamped"` where the maker put none there; left out where it was not read. */
  readonly stamp?: string;
  readonly neverStamped?: boolean;
  readonly chassisNumber: string;
  /** How the maker derived the stamp: `{6}` one place of the chassis number, `{7-11}` several, others themselves. */
  readonly derivation?: string;
  /** One person read the stamp, once: what is wrong with it may be the reading. */
  readonly readOnce?: boolean;
};

const PLACES = /\{(\d+)(?:-(\d+))?\}/g;

/** The stamp a chassis number leads to; `undefined` where the number is too short for the pattern. */
const findDerived = (chassisNumber: string, derivation: string): string | undefined => {
  let short = false;
  const text = derivation.replaceAll(PLACES, (_, first: string, last: string | undefined) => {
    const end = Number(last ?? first);
    short ||= end > chassisNumber.length;
    return chassisNumber.slice(Number(first) - 1, end);
  });
  return short ? undefined : text;
};

/**
 * The partial VIN on engine or gearbox against the one the maker would have derived from the chassis number. A stamp that was
 * read once is to be read again before anything is made of it.
 *
 * Source: the firm's entry; common practice, no source.
 *
 * @example
 * partialVin({ stamp: "R6720871", chassisNumber: "TM467R20871", derivation: "{6}{4-5}{7-11}" }).reason // "equal"
 */
export const partialVin = (input: PartialVinInput): RuleResult => {
  const words = { number: normalizeVin(input.chassisNumber) };
  if (input.neverStamped === true) return partialVinRecord.answer("never-stamped", { words });
  if (input.stamp === undefined) return partialVinRecord.answer("not-read", { words });
  const stamped = { ...words, stamp: normalizeNumber(input.stamp) };
  if (input.derivation === undefined) return partialVinRecord.answer("no-pattern", { words: stamped });
  const expected = findDerived(words.number, normalizeDerivation(input.derivation));
  if (expected === undefined) return partialVinRecord.answer("number-too-short", { words: stamped });
  const apart = misreading(stamped.stamp, expected);
  const detail = { words: { ...stamped, expected } };
  if (apart === "same") return partialVinRecord.answer("equal", detail);
  if (apart !== "other") return partialVinRecord.answer("probably-misread", detail);
  return partialVinRecord.answer(input.readOnce === true ? "read-again" : "differs", detail);
};

/** Capitals without spaces; the hyphens inside braces stay. */
const normalizeDerivation = (derivation: string): string => derivation.toUpperCase().replaceAll(/\s/g, "");
