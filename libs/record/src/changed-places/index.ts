import type { Finding } from "@evenhand/shared/finding";
import { canonicalJson } from "../canonical-json/index.ts";
import { type Place, placeKey } from "../place/index.ts";

/**
 * Places at which two versions of one report do not say the same: changed, taken out, or new. In what order a finding's parts are
 * written changes nothing.
 *
 * @example changedPlaces(findings, findings) // []
 */
export function changedPlaces(was: readonly Finding[], now: readonly Finding[]): Place[] {
  const before = new Map(was.map((finding) => [placeKey(finding), canonicalJson(finding)]));
  const after = new Map(now.map((finding) => [placeKey(finding), canonicalJson(finding)]));
  return [...new Map([...was, ...now].map((finding) => [placeKey(finding), finding])).entries()]
    .filter(([place]) => before.get(place) !== after.get(place))
    .map(([, { item, position }]) => ({ item, position }));
}
