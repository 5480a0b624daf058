import type { Entry } from "@evenhand/shared/comparison";
import { HAND_OVER_KINDS } from "@evenhand/shared/hand-over";
import type { HandOverComparison, HandOverLine } from "@evenhand/shared/hand-over";
import type { Report } from "@evenhand/shared/report";
import { severityRank } from "@evenhand/shared/severity";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { analyze } from "../analyze/index.ts";
import { asLookedAt } from "../as-looked-at/index.ts";
import { handOverFigure } from "./figures.ts";
import { handOverKind } from "./line-kind.ts";
import { askedPlaces, unseenOf, whyUnseen } from "./unseen.ts";
import type { WhyUnseen } from "./unseen.ts";

/** SHA-256 of the sealed reports. */
type Seals = { readonly collection: string | null; readonly delivery: string | null };

const NO_SEALS: Seals = { collection: null, delivery: null };

const lineOf = (entry: Entry, sheet: CompiledSheet, atCollection: WhyUnseen): HandOverLine[] => {
  const item = sheet.items.get(entry.item)?.item;
  if (item === undefined || item.circumstance === true) return [];
  const why = atCollection(entry.item, entry.position);
  const kind = handOverKind(entry, { item, unseenAtCollection: why !== undefined });
  if (kind === undefined) return [];
  const { position, atom, outcome, reason, severity } = entry;
  return [
    {
      kind,
      item: entry.item,
      position,
      atom,
      outcome,
      reason,
      severity,
      small: reason === "denied-trifle",
      unseenAtCollection: why ?? null,
    },
  ];
};

const rankOf = ({ kind, severity }: HandOverLine): readonly [number, number] => [
  HAND_OVER_KINDS.indexOf(kind),
  severity === null ? Number.POSITIVE_INFINITY : severityRank(severity),
];

/** Kinds as they are listed, the gravest of each first; the order of the sheet within. */
const gravestFirst = (a: HandOverLine, b: HandOverLine): number => {
  const [kindA, graveA] = rankOf(a);
  const [kindB, graveB] = rankOf(b);
  return kindA - kindB || (graveA === graveB ? 0 : graveA - graveB);
};

/**
 * Compares the report written when a car was collected with the one written when it was delivered, by the engine that compares any two
 * reports, and says of each line what it means for a car on its way. What was dark, wet, dirty or covered at either is unseen, never
 * the same. It says what is on one paper and not on the other; how it came there, it cannot say.
 *
 * @param collection what left; `checkReport` accepted it
 * @param delivery what arrived
 * @throws {RangeError} when a finding's place is not on the sheet
 * @example compareHandOver(collection, delivery, compileSheet(transportSheet1)).lines[0]?.kind // "new"
 */
export const compareHandOver = (
  collection: Report,
  delivery: Report,
  sheet: CompiledSheet,
  seals: Seals = NO_SEALS,
): HandOverComparison => {
  const looked = { collection: asLookedAt(collection, sheet), delivery: asLookedAt(delivery, sheet) };
  const sides = { collection: whyUnseen(looked.collection), delivery: whyUnseen(looked.delivery) };
  const { entries, engine } = analyze(looked.collection.report, looked.delivery.report, sheet);
  const places = askedPlaces(sheet.sheet, collection);
  const seen = ({ item, position }: (typeof places)[number]): boolean =>
    sides.collection(item.id, position) === undefined && sides.delivery(item.id, position) === undefined;
  const reports = { collection, delivery };
  return {
    format: "evenhand-hand-over",
    version: 1,
    engine,
    sheet: { id: sheet.sheet.id, version: sheet.sheet.version },
    ...seals,
    lines: entries.flatMap((entry) => lineOf(entry, sheet, sides.collection)).toSorted(gravestFirst),
    unseen: [
      ...unseenOf(places, "collection", sides.collection),
      ...unseenOf(places, "delivery", sides.delivery),
    ],
    odometer: handOverFigure("identity.odometer", "mi", reports, entries),
    milesAllowed: sheet.items.get("identity.odometer")?.item.reading?.riseAllowed ?? 0,
    keys: handOverFigure("identity.key-count", "1", reports, entries),
    lookedAtTwice: places.filter(seen).length,
    places: places.length,
  };
};
