import { createContext, useContext } from "react";
import type { ReportDraft } from "@evenhand/shared/http/reports";
import type { KeptFinding } from "../../offline/store";
import { placeKey, type Place } from "../../entities/sheet/places";

type Asked = ReportDraft["secondLook"];

const nowhere: ReadonlySet<string> = new Set();

/** Keys of the places that were named to be looked at again. */
export const askedPlaces = (asked: Asked): ReadonlySet<string> =>
  asked ? new Set(asked.places.map(({ item, position }) => placeKey(item, position))) : nowhere;

const LookAgainAt = createContext<ReadonlySet<string>>(nowhere);
export const LookAgainProvider = LookAgainAt.Provider;

/** Whether this place was named to be looked at again. */
export const useAskedAgain = (key: string): boolean => useContext(LookAgainAt).has(key);

/** What of a kept finding says which look it comes from. */
interface Looked {
  readonly finding: Pick<NonNullable<KeptFinding["finding"]>, "look"> | null;
}

/** Of the named places, those that were looked at again and those that were not. */
export const lookedAt = <At extends Pick<Place, "key">>(
  places: readonly At[],
  asked: ReadonlySet<string>,
  findings: ReadonlyMap<string, Looked>,
): { readonly again: readonly At[]; readonly open: readonly At[] } => {
  const named = places.filter(({ key }) => asked.has(key));
  const isAgain = ({ key }: At): boolean => findings.get(key)?.finding?.look === "second";
  return { again: named.filter(isAgain), open: named.filter((place) => !isAgain(place)) };
};
