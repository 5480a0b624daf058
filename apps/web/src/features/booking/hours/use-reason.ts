import type { RefusedHourBody } from "@evenhand/shared/http/booking";
import type { Stretch } from "@evenhand/shared/http/calendars";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { moneyText } from "../../../ui/money";
import { useTimes } from "../../../entities/time/use-times";
import { useDuration } from "../../../entities/time/use-duration";
import { useConflictWords } from "../use-conflict-words";
import { useMiles } from "../use-miles";

type Code = RefusedHourBody["code"];
type Of<C extends Code> = Extract<RefusedHourBody, { readonly code: C }>;

/** Instants and stretches on the site's clock. */
const useClock = (zone: string) => {
  const times = useTimes();
  const at = (instant: string): string => times.timeWithZone(instant, zone);
  return {
    at,
    both: ({ start, end }: Stretch) => ({ start: at(start), end: at(end) }),
    whole: ({ start, end }: Stretch): string => `${times.day(start, zone)}, ${times.range(start, end, zone)}`,
    full: (instant: string): string => times.full(instant, zone),
  };
};

type OfSite =
  | "notice"
  | "off-the-step"
  | "site-closed"
  | "dealer-closed"
  | "no-bay"
  | "no-daylight"
  | "car-taken"
  | "car-not-cold";

/** What is in the way at the site or in the car. */
const useSiteReason = (zone: string): ((reason: Of<OfSite>) => string) => {
  const t = useText();
  const duration = useDuration();
  const { at, both, full } = useClock(zone);
  const near = useNear(zone);
  return (reason) => {
    switch (reason.code) {
      case "notice":
        return t("why.notice", { earliest: full(reason.earliest) });
      case "off-the-step":
        return t("why.off-the-step", { earlier: at(reason.earlier), later: at(reason.later) });
      case "site-closed":
      case "no-daylight":
        return near(reason);
      case "dealer-closed":
        return t("why.dealer-closed", both(reason.closure));
      case "no-bay":
        return t("why.no-bay", { bays: reason.bays, ...both(reason.needed) });
      case "car-taken":
        return t("why.car-taken", both(reason.taken));
      case "car-not-cold":
        return t("why.car-not-cold", { end: at(reason.taken.end), time: duration(reason.soak) });
    }
  };
};

/** What would fit another time, with the nearest such time if there is one. */
const useNear = (zone: string): ((reason: Of<"site-closed" | "outside-hours" | "no-daylight">) => string) => {
  const t = useText();
  const { both, whole } = useClock(zone);
  return (reason) => {
    const { code, nearest } = reason;
    const values =
      code === "no-daylight" ? { stage: t(`stage.${reason.stage}`), ...both(reason.needed) } : {};
    return nearest === null
      ? t(`why.${code}.none`, values)
      : t(`why.${code}`, { ...values, nearest: whole(nearest) });
  };
};

type OfInspector =
  "outside-hours" | "inspector-taken" | "travel" | "outside-radius" | "lacks-skill" | "not-independent";

/** What is in the inspector's way. */
const useInspectorReason = (zone: string): ((reason: Of<OfInspector>) => string) => {
  const t = useText();
  const miles = useMiles();
  const conflicts = useConflictWords();
  const skills = useSkills();
  const travel = useTravel();
  const { both } = useClock(zone);
  const near = useNear(zone);
  return (reason) => {
    switch (reason.code) {
      case "outside-hours":
        return near(reason);
      case "inspector-taken":
        return t("why.inspector-taken", both(reason.taken));
      case "travel":
        return travel(reason);
      case "outside-radius":
        return t("why.outside-radius", { distance: miles(reason.distance), radius: miles(reason.radius) });
      case "lacks-skill":
        return t("why.lacks-skill", { skills: skills(reason.skills) });
      case "not-independent":
        return t("why.not-independent", { conflicts: conflicts(reason.conflicts) });
    }
  };
};

const useSkills = (): ((skills: Of<"lacks-skill">["skills"]) => string) => {
  const t = useText();
  const intl = useIntl();
  return (skills) =>
    intl.formatList(
      skills.map((skill) => t(`skill.${skill}`)),
      { type: "conjunction" },
    );
};

const useTravel = (): ((reason: Of<"travel">) => string) => {
  const t = useText();
  const duration = useDuration();
  return ({ direction, needed, available }) =>
    t("why.travel", { direction, needed: duration(needed), available: duration(available) });
};

/** What is not as it was in the price. */
const usePriceReason = (
  currency: string | undefined,
): ((reason: Of<"other-currency" | "price-changed">) => string) => {
  const t = useText();
  const intl = useIntl();
  const price = (minor: number): string =>
    currency === undefined ? String(minor) : moneyText(intl, { minor, currency });
  return (reason) =>
    reason.code === "other-currency"
      ? t("why.other-currency", { currency: reason.currency, wanted: reason.wanted })
      : t("why.price-changed", { offered: price(reason.offered), total: price(reason.total) });
};

/** One reason why an hour is not offered, with what would work, on the site's clock. */
export const useReason = (
  zone: string,
  currency: string | undefined,
): ((reason: RefusedHourBody) => string) => {
  const ofInspector = useInspectorReason(zone);
  const ofPrice = usePriceReason(currency);
  const ofSite = useSiteReason(zone);
  return (reason) => {
    switch (reason.code) {
      case "outside-hours":
      case "inspector-taken":
      case "travel":
      case "outside-radius":
      case "lacks-skill":
      case "not-independent":
        return ofInspector(reason);
      case "other-currency":
      case "price-changed":
        return ofPrice(reason);
      default:
        return ofSite(reason);
    }
  };
};
