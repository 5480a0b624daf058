import { Answer } from "@evenhand/shared/answer";
import { HandOverStage } from "@evenhand/shared/http/hand-overs";
import { Instant } from "@evenhand/shared/identifier";
import { UnitSymbol } from "@evenhand/shared/unit";
import { z } from "zod";

const texts = z.record(z.string(), z.string());

/** What was filled in on the carrier's page so far, by place key. */
const CarriedSheet = z.strictObject({
  /** When it was begun. */
  started: Instant,
  /** Where the car stands, as typed. */
  place: z.string(),
  said: z.record(z.string(), Answer),
  notes: texts,
  /** What was typed as a figure and cannot be read as one. */
  unread: z.record(z.string(), z.strictObject({ texts, unit: UnitSymbol.optional() })),
});
export type CarriedSheet = z.infer<typeof CarriedSheet>;

const Kept = z.strictObject({
  format: z.literal("evenhand-carried-sheet"),
  version: z.literal(1),
  stage: HandOverStage,
  sheet: CarriedSheet,
});

export type SheetAct =
  | {
      readonly act: "say";
      readonly key: string;
      readonly answer: Answer | null;
      readonly unread: CarriedSheet["unread"][string] | undefined;
    }
  | { readonly act: "note"; readonly key: string; readonly note: string }
  | { readonly act: "place"; readonly place: string };

/** A sheet on which nothing stands. */
export const blankSheet = (started: string): CarriedSheet => ({
  started,
  place: "",
  said: {},
  notes: {},
  unread: {},
});

export const isBlank = ({ place, said, notes, unread }: CarriedSheet): boolean =>
  place === "" && [said, notes, unread].every((each) => Object.keys(each).length === 0);

const put = <T>(all: Readonly<Record<string, T>>, key: string, value: T | undefined): Record<string, T> => {
  const others = Object.entries(all).filter(([each]) => each !== key);
  return Object.fromEntries(value === undefined ? others : [...others, [key, value]]);
};

/**
 * The sheet after one thing was typed or pressed.
 *
 * @example filledIn(blankSheet(now), { act: "place", place: "Dock 4" }).place // "Dock 4"
 */
export function filledIn(sheet: CarriedSheet, done: SheetAct): CarriedSheet {
  if (done.act === "place") return { ...sheet, place: done.place };
  const { key } = done;
  if (done.act === "note") return { ...sheet, notes: put(sheet.notes, key, done.note || undefined) };
  const { answer, unread } = done;
  return {
    ...sheet,
    said: put(sheet.said, key, answer ?? undefined),
    unread: put(sheet.unread, key, unread),
  };
}

/** The keys of places that would not be sent as they stand: a figure that cannot be read, or a note without an answer. */
export const unsendable = ({ said, notes, unread }: CarriedSheet): readonly string[] => [
  ...new Set([
    ...Object.keys(unread),
    ...Object.entries(notes)
      .filter(([key, note]) => note.trim() !== "" && said[key] === undefined)
      .map(([key]) => key),
  ]),
];

export const keptText = (stage: HandOverStage, sheet: CarriedSheet): string =>
  JSON.stringify({ format: "evenhand-carried-sheet", version: 1, stage, sheet } satisfies z.input<
    typeof Kept
  >);

export type ReadKept =
  | { readonly kind: "nothing" }
  | { readonly kind: "restored"; readonly sheet: CarriedSheet }
  | { readonly kind: "unreadable" | "other-stage" };

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

/**
 * What a device kept of a sheet, read again.
 *
 * @param text as stored; `null` where nothing is
 * @example readKept(null, "collection") // { kind: "nothing" }
 */
export function readKept(text: string | null, stage: HandOverStage): ReadKept {
  if (text === null) return { kind: "nothing" };
  const kept = Kept.safeParse(parsed(text));
  if (!kept.success) return { kind: "unreadable" };
  if (kept.data.stage !== stage) return { kind: "other-stage" };
  return { kind: "restored", sheet: kept.data.sheet };
}
