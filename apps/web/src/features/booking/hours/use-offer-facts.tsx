import type { OfferBody } from "@evenhand/shared/booking";
import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { When } from "../../../entities/time/When";
import { useDuration } from "../../../entities/time/use-duration";
import { useTimes } from "../../../entities/time/use-times";
import { useMiles } from "../use-miles";
import type { Found } from "./use-hours";
import { useInspectorLine } from "../use-inspector-line";

const useWay = (): ((travel: OfferBody["travel"]) => string) => {
  const t = useText();
  const duration = useDuration();
  const miles = useMiles();
  return ({ outMinutes, backMinutes, outMeters }) =>
    t("offer.way", {
      out: duration(outMinutes),
      back: duration(backMinutes),
      distance: miles(outMeters),
    });
};

/** When, where, by whom, with which skills, how far they come, and the lift. */
export const useOfferFacts = (
  offer: OfferBody,
  found: Found,
): readonly (readonly [ReactNode, ReactNode])[] => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  const inspectorLine = useInspectorLine();
  const way = useWay();
  const { site, zone, inspectors } = found;
  const person = inspectors.get(offer.inspector);
  const skills = person?.skills.map((skill) => t(`skill.${skill}`)) ?? [];
  const lifts = offer.bays.map(({ start, end }) => times.range(start, end, zone));
  return [
    [t("offer.when"), <When key="when" start={offer.start} end={offer.end} zone={zone} />],
    [t("offer.where"), `${site.name}, ${site.address}`],
    [t("offer.who"), inspectorLine(person)],
    [
      t("offer.skills"),
      skills.length === 0 ? t("offer.skills.none") : intl.formatList(skills, { type: "unit" }),
    ],
    [t("offer.way.term"), way(offer.travel)],
    [t("offer.lift"), lifts.length === 0 ? t("offer.lift.none") : lifts.join("; ")],
  ];
};
