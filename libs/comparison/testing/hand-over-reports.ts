import type { Answer, Fault } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { transportSheet1 } from "@evenhand/sheet/transport-sheet-1";
import { finding, inspection } from "./small-reports.ts";

export const transportSheet = compileSheet(transportSheet1);

const common = {
  ...inspection([]),
  sheet: { id: "transport", version: 1 },
  author: { organization: "Long Valley Car Haulage", role: "carrier" },
} as const satisfies Report;

const SOUND: Readonly<Record<string, Answer>> = {
  "visit.light": { kind: "choice", option: "daylight" },
  "visit.body-surface": { kind: "choice", option: "dry" },
  "identity.odometer": { kind: "reading", unit: "mi", values: [{ value: 61_240 }] },
  "identity.fuel-level": { kind: "choice", option: "quarter" },
  "identity.key-count": { kind: "reading", unit: "1", values: [{ value: 2 }] },
  "contents.loose-items": { kind: "presence", value: "absent" },
  "road.leaks": { kind: "choice", option: "none" },
  "lashing.ground-clearance": { kind: "reading", unit: "mm", values: [{ value: 140 }] },
  "lashing.tie-down-points": { kind: "choice", option: "sound" },
};

const soundOf = (item: string, kind: string): Answer =>
  SOUND[item] ??
  (kind === "faults"
    ? { kind: "faults", found: [], denied: "all" }
    : kind === "presence"
      ? { kind: "presence", value: "present" }
      : { kind: "working", value: "yes" });

/** Every place of the sheet, looked at in daylight on a clean car, and nothing noted. */
export const soundFindings = (): Finding[] =>
  applicablePlaces(transportSheet1, common.vehicle.form).map(({ item, position }) =>
    finding(item.id, soundOf(item.id, item.answer), { position }),
  );

/** The sound findings with some answered otherwise; `null` leaves the place out. */
export const changed = (...others: (readonly [item: string, position: string, answer: Answer | null])[]) => {
  const by = new Map(others.map(([item, position, answer]) => [`${item} ${position}`, answer]));
  return soundFindings().flatMap((each): Finding[] => {
    const answer = by.get(`${each.item} ${each.position}`);
    return answer === null ? [] : [answer === undefined ? each : { ...each, answer }];
  });
};

export const collectionOf = (findings: Finding[]): Report => ({
  ...common,
  kind: "collection",
  visit: { started: "2026-06-01T14:00:00Z", zone: "America/Chicago" },
  findings,
});

export const deliveryOf = (findings: Finding[]): Report => ({
  ...common,
  kind: "delivery",
  visit: { started: "2026-06-04T19:00:00Z", zone: "America/New_York" },
  findings,
});

/** Faults found at a place, and none beside them. */
export const foundAt = (item: string, ...found: Fault[]): Answer => ({
  kind: "faults",
  found,
  denied: [...(transportSheet.items.get(item)?.faultKinds.keys() ?? [])].filter(
    (kind) => !found.some((each) => each.kind === kind),
  ),
});

export const millimeters = (value: number) => ({ value, unit: "mm" }) as const;
