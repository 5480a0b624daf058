import type { Finding } from "@evenhand/shared/finding";
import type { UnseenPlaces, UnseenReason } from "@evenhand/shared/hand-over";
import type { Report } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { NOT_KNOWN } from "../compare-choice/index.ts";
import type { LookedAt } from "../as-looked-at/index.ts";

export const placeKey = (item: string, position: string): string => `${item} ${position}`;

const isNotKnown = ({ answer }: Finding): boolean =>
  ((answer.kind === "working" || answer.kind === "presence") && answer.value === NOT_KNOWN) ||
  (answer.kind === "choice" && answer.option === NOT_KNOWN);

/** Why a report does not speak for a place; `undefined` where it does. */
export type WhyUnseen = (item: string, position: string) => UnseenReason | undefined;

/** One report, asked for one place after another. A fault found in the dark does not make the rest of its place seen. */
export const whyUnseen = ({ report, spoiled }: LookedAt): WhyUnseen => {
  const findings = new Map(report.findings.map((each) => [placeKey(each.item, each.position), each]));
  return (item, position) => {
    const finding = findings.get(placeKey(item, position));
    if (finding === undefined) return "not-reported";
    if (finding.answer.kind === "not-seen") return finding.answer.reason;
    if (finding.answer.kind === "faults") return spoiled(item);
    return isNotKnown(finding) ? "not-known" : undefined;
  };
};

/** Every place the sheet asks of this car, circumstances aside. */
export const askedPlaces = (sheet: Sheet, { vehicle }: Pick<Report, "vehicle">) =>
  applicablePlaces(sheet, vehicle.form).filter(({ item }) => item.circumstance !== true);

/** What each report does not speak for, by reason, in the order of the sheet. */
export const unseenPlaces = (
  places: ReturnType<typeof askedPlaces>,
  sides: Readonly<Record<"collection" | "delivery", WhyUnseen>>,
): UnseenPlaces[] => {
  const found = new Map<string, UnseenPlaces>();
  for (const at of ["collection", "delivery"] as const) {
    for (const { item, position } of places) {
      const reason = sides[at](item.id, position);
      if (reason === undefined) continue;
      const key = `${at} ${reason}`;
      const group = found.get(key) ?? { at, reason, places: [] };
      group.places.push({ item: item.id, position });
      found.set(key, group);
    }
  }
  return [...found.values()];
};
