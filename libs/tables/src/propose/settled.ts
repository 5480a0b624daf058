import { applies, positionsOf } from "@evenhand/sheet/expand";
import { answerOf } from "../answer-of/index.ts";
import type { Claim } from "../table-claims/index.ts";
import type { Proposal, Reading } from "./reading.ts";

/** What somebody said a line of their sheet is: an item, and at which of its places. */
export type SettledLine = { readonly item: string; readonly positions: readonly string[] };

/** Only places this car has are meant: another car of the same firm may have fewer doors. */
const placesHere = ({ item, positions }: SettledLine, { sheet, form }: Reading): readonly string[] => {
  const known = sheet.items.find(({ id }) => id === item);
  if (known === undefined || (form !== undefined && !applies(known.appliesWhen, form))) return [];
  if (known.positions === undefined) return [""];
  const set = sheet.positionSets.find(({ id }) => id === known.positions);
  if (set === undefined || form === undefined) return positions;
  const here = new Set(positionsOf(set, form));
  return positions.filter((position) => here.has(position));
};

/**
 * What a claim means whose line was settled by hand before: the item and places are known, and only the value is read.
 *
 * @returns nothing where the sheet or the car has no such item or place, so that the line is read as any other
 */
export const proposeSettled = (
  claim: Claim,
  settled: SettledLine,
  reading: Reading,
): Proposal | undefined => {
  const item = reading.sheet.items.find(({ id }) => id === settled.item);
  const positions = placesHere(settled, reading);
  if (item === undefined || positions.length === 0) return undefined;
  const { value, where, note, unit, scale = reading.scale } = claim;
  const { faultKinds } = reading;
  const made = answerOf({ item, value, labels: where, note, unit, scale, faultKinds });
  if (!made.ok) return { ok: false, why: made.why, item: item.id };
  const meant = {
    item,
    positions,
    answer: made.answer,
    confidence: made.sure ? 1 : 0.9,
    share: 1,
    sure: made.sure,
  };
  return { ok: true, meant: [made.scale === undefined ? meant : { ...meant, scale: made.scale }] };
};
