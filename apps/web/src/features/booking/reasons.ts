import type { RefusedHourBody } from "@evenhand/shared/http/booking";
import type { Stretch } from "@evenhand/shared/http/calendars";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import { useTimes } from "../../entities/time/use-times";
import { useDuration } from "../../entities/time/use-duration";

const METERS_A_MILE = 1609.344;

/** A distance on American roads: `12 mi`. */
export const useMiles = (): ((meters: number) => string) => {
  const intl = useIntl();
  return (meters) =>
    intl.formatNumber(meters / METERS_A_MILE, {
      style: "unit",
      unit: "mile",
      maximumFractionDigits: meters < 16_000 ? 1 : 0,
    });
};

type Conflicts = Extract<RefusedHourBody, { code: "not-independent" }>["conflicts"];

export const useConflictWords = (): ((conflicts: Conflicts) => string) => {
  const t = useText();
  return (conflicts) =>
    conflicts
      .map((one) =>
        one.code === "interest-in-dealer"
          ? t("conflict.interest-in-dealer", {
              kind: t(`interest.${one.kind}`),
              holder: t(`beholden.holder.${one.holder}`),
            })
          : t("conflict.dealt-with-car", { dealing: t(`dealing.${one.dealing}`) }),
      )
      .join("; ");
};

/** One reason why an hour is not offered, with what would work, on the site's clock. */
export const useReason = (
  zone: string,
  currency: string | undefined,
): ((reason: RefusedHourBody) => string) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  const duration = useDuration();
  const miles = useMiles();
  const conflicts = useConflictWords();
  const at = (instant: string): string => times.timeWithZone(instant, zone);
  const both = ({ start, end }: Stretch) => ({ start: at(start), end: at(end) });
  const whole = ({ start, end }: Stretch): string =>
    `${times.day(start, zone)}, ${times.range(start, end, zone)}`;
  const near = (code: "site-closed" | "outside-hours", nearest: Stretch | null): string =>
    nearest === null ? t(`why.${code}.none`) : t(`why.${code}`, { nearest: whole(nearest) });
  const daylight = (reason: Extract<RefusedHourBody, { code: "no-daylight" }>): string => {
    const values = { stage: t(`stage.${reason.stage}`), ...both(reason.needed) };
    return reason.nearest === null
      ? t("why.no-daylight.none", values)
      : t("why.no-daylight", { ...values, nearest: whole(reason.nearest) });
  };
  const price = (minor: number): string =>
    currency === undefined ? String(minor) : moneyText(intl, { minor, currency });
  return (reason) => {
    switch (reason.code) {
      case "notice":
        return t("why.notice", { earliest: times.full(reason.earliest, zone) });
      case "off-the-step":
        return t("why.off-the-step", { earlier: at(reason.earlier), later: at(reason.later) });
      case "site-closed":
      case "outside-hours":
        return near(reason.code, reason.nearest);
      case "dealer-closed":
        return t("why.dealer-closed", both(reason.closure));
      case "no-bay":
        return t("why.no-bay", { bays: reason.bays, ...both(reason.needed) });
      case "no-daylight":
        return daylight(reason);
      case "car-taken":
      case "inspector-taken":
        return t(`why.${reason.code}`, both(reason.taken));
      case "car-not-cold":
        return t("why.car-not-cold", { end: at(reason.taken.end), time: duration(reason.soak) });
      case "travel":
        return t("why.travel", {
          direction: reason.direction,
          needed: duration(reason.needed),
          available: duration(reason.available),
        });
      case "outside-radius":
        return t("why.outside-radius", { distance: miles(reason.distance), radius: miles(reason.radius) });
      case "lacks-skill":
        return t("why.lacks-skill", {
          skills: intl.formatList(
            reason.skills.map((skill) => t(`skill.${skill}`)),
            { type: "conjunction" },
          ),
        });
      case "not-independent":
        return t("why.not-independent", { conflicts: conflicts(reason.conflicts) });
      case "other-currency":
        return t("why.other-currency", { currency: reason.currency, wanted: reason.wanted });
      case "price-changed":
        return t("why.price-changed", { offered: price(reason.offered), total: price(reason.total) });
    }
  };
};
