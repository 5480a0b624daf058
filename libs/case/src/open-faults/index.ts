import type { Answer } from "@evenhand/shared/answer";
import { canonicalJson } from "@evenhand/record/canonical-json";

type Place = { readonly item: string; readonly position: string };

/** A fault the dealer accepted, and what was stated of the place then. Times in milliseconds. */
export type AcceptedFault = Place & {
  readonly release: string;
  readonly since: number;
  /** `null` where nothing was stated. */
  readonly stated: unknown;
};

/** The newest sealed statement. */
export type SealedStatement = {
  readonly sealed: number;
  readonly findings: readonly (Place & { readonly answer: Answer })[];
};

const keyOf = ({ item, position }: Place): string => `${item} ${position}`;

/**
 * Faults that the newest statement does not answer: it says the same of the place as when the fault was accepted, or nothing.
 * Leaving a claim out is silence, and no answer; nor is what was sealed before the fault was accepted.
 *
 * @param statement `null` where none is sealed: then every fault is open
 * @returns the open ones, in the order given
 */
export function openFaults<Fault extends AcceptedFault>(
  faults: readonly Fault[],
  statement: SealedStatement | null,
): Fault[] {
  if (statement === null) return [...faults];
  const now = new Map(statement.findings.map((finding) => [keyOf(finding), canonicalJson(finding.answer)]));
  return faults.filter((fault) => {
    const says = now.get(keyOf(fault));
    const said = fault.stated === null ? null : canonicalJson(fault.stated);
    return statement.sealed <= fault.since || says === undefined || says === said;
  });
}
