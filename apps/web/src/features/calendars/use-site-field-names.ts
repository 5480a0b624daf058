import { useText } from "../../strings/text";
import type { SiteNumber } from "./site-form";

const ids = {
  latitude: "place.latitude",
  longitude: "place.longitude",
  perVisit: "site.per-visit",
  perLiftSpell: "site.per-lift",
} as const satisfies Readonly<Record<SiteNumber, string>>;

export const useSiteFieldNames = (): ((names: readonly SiteNumber[]) => readonly string[]) => {
  const t = useText();
  return (names) => names.map((name) => t(ids[name]));
};
