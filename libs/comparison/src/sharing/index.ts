import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";

/** Pairs of ids, of report A and of report B, that name one thing. */
export type SameIds = readonly (readonly [a: string, b: string])[];

/** Whether the two sides of one item carry the same error of instrument or eye. */
export type Sharing = {
  readonly instrument: (a: Finding, b: Finding) => boolean;
  /** One person's eye on both sides, whatever the instrument. */
  readonly person: (a: Finding, b: Finding) => boolean;
};

type Parties = Pick<Report, "author" | "instruments" | "persons">;
type Named = { readonly id: string; readonly name: string };

const sameInHouse = (a: readonly Named[], b: readonly Named[]): SameIds => {
  const names = new Map(b.map(({ id, name }) => [id, name]));
  return a.flatMap(({ id, name }) => (names.get(id) === name ? [[id, id] as const] : []));
};

const pairing = (pairs: SameIds) => {
  const byA = new Map<string, Set<string>>();
  for (const [a, b] of pairs) byA.set(a, (byA.get(a) ?? new Set()).add(b));
  return (a: string | undefined, b: string | undefined): boolean =>
    a !== undefined && b !== undefined && byA.get(a)?.has(b) === true;
};

/**
 * What instruments and people two reports share. Ids are names inside one report, so across reports they mean the
 * same thing only where the caller says so, or where one organization wrote both and id and name are equal. To share
 * what is not shared would narrow the interval and find differences that are not there.
 *
 * @example findSharing(statement, inspection, {}).instrument(findingA, findingB) // false: two firms
 */
export const findSharing = (
  a: Parties,
  b: Parties,
  said: { readonly sameInstruments?: SameIds; readonly samePersons?: SameIds },
): Sharing => {
  const oneHouse = a.author.organization === b.author.organization && a.author.role === b.author.role;
  const instruments = oneHouse ? sameInHouse(a.instruments, b.instruments) : [];
  const persons = oneHouse ? sameInHouse(a.persons, b.persons) : [];
  const sameInstrument = pairing([...instruments, ...(said.sameInstruments ?? [])]);
  const samePerson = pairing([...persons, ...(said.samePersons ?? [])]);
  const person = (first: Finding, second: Finding): boolean => samePerson(first.person, second.person);
  return {
    instrument: (first, second) =>
      first.instrument === undefined && second.instrument === undefined
        ? person(first, second)
        : sameInstrument(first.instrument, second.instrument),
    person,
  };
};
