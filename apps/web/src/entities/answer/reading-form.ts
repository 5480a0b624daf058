import { convert } from "@evenhand/measurement/unit";
import type { AnswerOf, ReadingValue } from "@evenhand/shared/answer";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import type { Unread } from "../../offline/store";
import { parseNumber } from "./parse-number";

export interface Slot {
  /** As typed. */
  readonly text: string;
  readonly spot: string | undefined;
}

/** The fields of a reading as they stand on the screen. */
export interface ReadingForm {
  readonly unit: UnitSymbol;
  readonly slots: readonly Slot[];
}

/** `implausible`: a number, but no car gives it; a wrong unit or decimal point most likely. */
export type SlotState = "empty" | "read" | "unreadable" | "implausible";

const fieldOf = (at: number): string => `reading.${at}`;

const askedSlots = (spec: ReadingSpec): readonly Slot[] =>
  Array.from({ length: spec.ask.spots * spec.ask.readings }, (_, at) => {
    const nth = Math.floor(at / spec.ask.readings);
    return { text: "", spot: spec.spots[nth]?.id ?? (spec.ask.spots > 1 ? `spot-${nth + 1}` : undefined) };
  });

/** As many fields as the sheet asks for, whatever more was read, and what could not be read where it was typed. */
export const readingForm = (
  spec: ReadingSpec,
  answer: AnswerOf<"reading"> | undefined,
  unread: Unread | undefined,
  usual: UnitSymbol = spec.unit,
): ReadingForm => {
  const slots = [...askedSlots(spec)];
  const typed = new Map<number, string>();
  for (const [field, text] of Object.entries(unread?.texts ?? {})) {
    const at = Number(field.replace("reading.", ""));
    if (Number.isInteger(at)) typed.set(at, text);
  }
  while (slots.length <= Math.max(-1, ...typed.keys())) slots.push({ text: "", spot: undefined });
  for (const [at, text] of typed) slots[at] = { text, spot: slots[at]?.spot };
  for (const { value, spot } of answer?.values ?? []) {
    const free = slots.findIndex((slot) => slot.text === "" && slot.spot === spot);
    const filled = { text: String(value), spot };
    if (free === -1) slots.push(filled);
    else slots[free] = filled;
  }
  return { unit: answer?.unit ?? unread?.unit ?? usual, slots };
};

export const slotState = (spec: ReadingSpec, unit: UnitSymbol, { text }: Slot): SlotState => {
  if (text.trim() === "") return "empty";
  const value = parseNumber(text);
  if (value === undefined) return "unreadable";
  const [least, most] = spec.plausible;
  const base = convert(value, unit, spec.unit);
  return base < least || base > most ? "implausible" : "read";
};

export const withText = (form: ReadingForm, at: number, text: string): ReadingForm => ({
  ...form,
  slots: form.slots.map((slot, index) => (index === at ? { ...slot, text } : slot)),
});

export const oneMore = (form: ReadingForm): ReadingForm => ({
  ...form,
  slots: [...form.slots, { text: "", spot: undefined }],
});

/** What the fields say: the numbers that can be read, and beside them what cannot. One bad field takes no other with it. */
export const readingOf = (
  spec: ReadingSpec,
  { unit, slots }: ReadingForm,
): { readonly answer: AnswerOf<"reading"> | null; readonly unread: Unread | undefined } => {
  const states = slots.map((slot) => slotState(spec, unit, slot));
  const values = slots.flatMap(({ text, spot }, at): ReadingValue[] => {
    const value = states[at] === "read" ? parseNumber(text) : undefined;
    if (value === undefined) return [];
    return [spot === undefined ? { value } : { value, spot }];
  });
  const texts = Object.fromEntries(
    slots.flatMap(({ text }, at) =>
      states[at] === "unreadable" || states[at] === "implausible" ? [[fieldOf(at), text]] : [],
    ),
  );
  return {
    answer: values.length === 0 ? null : { kind: "reading", unit, values },
    unread: Object.keys(texts).length === 0 ? undefined : { texts, unit },
  };
};
