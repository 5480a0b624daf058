import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Instrument } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import type { Change } from "../../offline/changes";
import type { KeptFinding, Unread } from "../../offline/store";
import { fittingInstrument } from "./fitting-instrument";

/** How firmly it is said, what it rests on, and in which circumstances. */
export type GroundsOf = Pick<
  Finding,
  "firmness" | "basis" | "instrument" | "conditions" | "note" | "person" | "evidence" | "look"
>;

/** What stands at one place while it is open: what is kept of it is worked out from this alone. */
export interface PlaceState {
  readonly answer: Answer | null;
  readonly unread: Unread | undefined;
  readonly grounds: GroundsOf;
  /** Conditions typed as what cannot be read, by `condition.<id>`. */
  readonly conditions: Readonly<Record<string, string>>;
}

export interface PlaceEdit extends PlaceState {
  /** The reasons for not having seen it are shown; nothing changes until one is chosen. */
  readonly notSeen: boolean;
  /** What stood before something was cleared, removed or replaced. */
  readonly before: PlaceState | null;
  /** Rises when the fields must start anew from what stands. */
  readonly anew: number;
}

export type EditStep =
  | { readonly type: "answer"; readonly answer: Answer | null; readonly unread?: Unread | undefined }
  | { readonly type: "grounds"; readonly change: Partial<GroundsOf> }
  | { readonly type: "condition"; readonly id: string; readonly text: string | undefined }
  | { readonly type: "not-seen" }
  | { readonly type: "clear" }
  | { readonly type: "undo" };

const isMeasured = (answer: Answer | null): boolean => answer?.kind === "reading" || answer?.kind === "color";

const firstGrounds = (
  item: Item,
  instruments: readonly Instrument[],
  last: Pick<Finding, "instrument" | "conditions"> | undefined,
): GroundsOf => {
  const known = instruments.some(({ id }) => id === last?.instrument) ? last?.instrument : undefined;
  const instrument = known ?? fittingInstrument(item, instruments);
  return {
    firmness: "asserted",
    basis: instrument === undefined ? "seen" : "measured",
    instrument,
    conditions: last?.conditions,
  };
};

/** @param last what this item's other places were read with; before the fitting instrument of the visit */
export const startEdit = (
  item: Item,
  kept: KeptFinding | undefined,
  instruments: readonly Instrument[],
  last: Pick<Finding, "instrument" | "conditions"> | undefined,
): PlaceEdit => {
  const finding = kept?.finding ?? null;
  const texts = Object.entries(kept?.unread?.texts ?? {});
  const own = texts.filter(([field]) => !field.startsWith("condition."));
  return {
    answer: finding?.answer ?? null,
    unread:
      kept?.unread === undefined || own.length === 0
        ? undefined
        : { ...kept.unread, texts: Object.fromEntries(own) },
    grounds: finding ?? firstGrounds(item, instruments, last),
    conditions: Object.fromEntries(texts.filter(([field]) => field.startsWith("condition."))),
    notSeen: finding?.answer.kind === "not-seen",
    before: null,
    anew: 0,
  };
};

const stateOf = ({ answer, unread, grounds, conditions }: PlaceEdit): PlaceState => ({
  answer,
  unread,
  grounds,
  conditions,
});

/** Something that was said is said no more, and not by typing over it. */
const losesSome = (from: Answer | null, to: Answer | null): boolean => {
  if (from === null || to === null) return from?.kind === "faults" && from.found.length > 0;
  if (from.kind === "faults" && to.kind === "faults") return to.found.length < from.found.length;
  return from.kind !== to.kind;
};

const cleared = (edit: PlaceEdit): PlaceEdit => ({
  ...edit,
  answer: null,
  unread: undefined,
  conditions: {},
  notSeen: false,
  before: stateOf(edit),
  anew: edit.anew + 1,
});

type StepOf<K extends EditStep["type"]> = Extract<EditStep, { type: K }>;

const answered = (edit: PlaceEdit, { answer, unread }: StepOf<"answer">): PlaceEdit => {
  // Said of the whole thing and not in its fields: they start anew.
  const whole = answer?.kind === "not-fitted";
  return {
    ...edit,
    answer,
    unread,
    notSeen: whole ? false : edit.notSeen,
    before: losesSome(edit.answer, answer) || (whole && edit.unread) ? stateOf(edit) : null,
    anew: whole ? edit.anew + 1 : edit.anew,
  };
};

const noted = (edit: PlaceEdit, { id, text }: StepOf<"condition">): PlaceEdit => {
  const field = `condition.${id}`;
  const rest = Object.entries(edit.conditions).filter(([other]) => other !== field);
  return {
    ...edit,
    conditions: Object.fromEntries(text === undefined ? rest : [...rest, [field, text]]),
  };
};

const undone = (edit: PlaceEdit): PlaceEdit =>
  edit.before === null
    ? edit
    : {
        ...edit,
        ...edit.before,
        notSeen: edit.before.answer?.kind === "not-seen",
        before: null,
        anew: edit.anew + 1,
      };

/** What stands at the place after a step. */
export const editAfter = (edit: PlaceEdit, step: EditStep): PlaceEdit => {
  switch (step.type) {
    case "answer":
      return answered(edit, step);
    case "grounds":
      return { ...edit, grounds: { ...edit.grounds, ...step.change } };
    case "condition":
      return noted(edit, step);
    case "not-seen":
      return edit.notSeen && edit.answer?.kind === "not-seen"
        ? cleared(edit)
        : { ...edit, notSeen: !edit.notSeen, anew: edit.anew + 1 };
    case "clear":
      return cleared(edit);
    case "undo":
      return undone(edit);
  }
};

const clean = (conditions: Finding["conditions"]): Finding["conditions"] =>
  conditions !== undefined && Object.keys(conditions).length > 0 ? conditions : undefined;

/** The same, where the place was named to be looked at again: whoever answers it anew has looked again. */
export const editAgainAfter = (edit: PlaceEdit, step: EditStep): PlaceEdit => {
  const next = editAfter(edit, step);
  const answers = step.type === "answer" && step.answer !== null;
  return answers ? { ...next, grounds: { ...next.grounds, look: "second" } } : next;
};

/** What is kept of it. A typed reading keeps the instrument it was taken with; an answer without a measure has none. */
export const changeOf = (
  place: { readonly item: Pick<Item, "id">; readonly position: string },
  { answer, unread, grounds, conditions }: PlaceState,
  time: string,
): Change => {
  const texts = { ...unread?.texts, ...conditions };
  const { firmness, basis, instrument, note, person, evidence, look } = grounds;
  const finding: Finding | null = answer && {
    item: place.item.id,
    position: place.position,
    firmness,
    basis,
    note,
    person,
    evidence,
    look,
    conditions: clean(grounds.conditions),
    instrument: isMeasured(answer) ? instrument : undefined,
    answer,
    time,
  };
  return {
    finding,
    unread: Object.keys(texts).length === 0 ? undefined : { ...unread, texts },
  };
};
