import type { Finding } from "@evenhand/shared/finding";
import type { UnseenPlaces, UnseenReason } from "@evenhand/shared/hand-over";
import type { Report } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { NOT_KNOWN } from "../compare-choice/index.ts";
import type { LookedAt } from "../as-looked-at/index.ts";

const placeKey = (item: string, position: string): string => `${item} ${position}`;

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

type Places = ReturnType<typeof askedPlaces>;

/** What one report does not speak for, by reason, in the order of the sheet. */
export const unseenOf = (places: Places, at: UnseenPlaces["at"], why: WhyUnseen): UnseenPlaces[] => {
  const found = new Map<UnseenReason, UnseenPlaces>();
  for (const { item, position } of places) {
    const reason = why(item.id, position);
    if (reason === undefined) continue;
    const group = found.get(reason) ?? { at, reason, places: [] };
    group.places.push({ item: item.id, position });
    found.set(reason, group);
  }
  return [...found.values()];
};
