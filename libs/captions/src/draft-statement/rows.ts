import type { Item } from "@evenhand/shared/sheet";
import type { Breath } from "./breath.ts";
import { isPlaced, keyOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import { record } from "./record.ts";
import { answerByNumber } from "./said-to.ts";

export const openRow = (draft: Draft, item: Item, places: readonly string[], breath: Breath): void => {
  if (draft.state.row?.item === item.id && draft.state.row.next > 1) return;
  const several =
    places.length > 1 && breath.sides.adds.length === 0 && !breath.sides.all && breath.words.length === 0;
  const begun = several && draft.remarks.has(keyOf(item.id, places[0] ?? ""));
  draft.state.row = begun ? { item: item.id, places, next: 1 } : undefined;
};

/** Several numbers in one breath, as many as there are places. */
export const dealOut = (
  draft: Draft,
  item: Item,
  places: readonly string[],
  breath: Breath,
): readonly string[] => {
  const answers = breath.numbers
    .map((number) => answerByNumber(draft, item, { ...breath, numbers: [number] }))
    .filter((answer) => answer !== undefined);
  if (answers.length < 3 || answers.length > places.length) return [];
  for (const place of places) draft.remarks.delete(keyOf(item.id, place));
  if (draft.state.row !== undefined) draft.state.row.next = answers.length;
  return answers.flatMap((answer, index) =>
    record(draft, item, [places[index] ?? ""], answer, breath, false, 1, []),
  );
};

/** Numbers one after another, with no part between them, are dealt out over the places of the item: cylinder by cylinder. */
export const nextInRow = (draft: Draft, breath: Breath): readonly string[] | undefined => {
  const { row } = draft.state;
  const [number] = breath.numbers;
  if (row === undefined || number === undefined || breath.words.length > 0 || isPlaced(breath))
    return undefined;
  const item = draft.items.get(row.item);
  const place = row.places[row.next];
  if (item === undefined) return undefined;
  if (draft.state.correcting)
    return record(
      draft,
      item,
      [row.places[row.next - 1] ?? ""],
      answerByNumber(draft, item, breath),
      breath,
      false,
      1,
      [],
    );
  if (place === undefined) return undefined;
  const answer = answerByNumber(draft, item, breath);
  if (answer === undefined) return undefined;
  if (row.next === 1) for (const later of row.places.slice(1)) draft.remarks.delete(keyOf(row.item, later));
  row.next += 1;
  return record(draft, item, [place], answer, breath, false, 1, []);
};
