import type { RepairedToken } from "@evenhand/lexicon/repair";
import { stemText } from "@evenhand/lexicon/token-text";
import type { Item, PositionSet } from "@evenhand/shared/sheet";
import { applies } from "@evenhand/sheet/expand";
import type { SpokenText } from "../spoken-text/index.ts";
import type { Breath } from "./breath.ts";
import type { DraftContext } from "./context.ts";
import { isBritish } from "./phrases.ts";
import type { Remark } from "./remark.ts";
import { atFirst } from "./state.ts";
import type { State } from "./state.ts";
import { Targets } from "./targets.ts";

/** A draft in the making: what is claimed so far, what it is made by, and what the talk has come to. */
export type Draft = {
  readonly remarks: Map<string, Remark>;
  readonly items: ReadonlyMap<string, Item>;
  readonly sets: ReadonlyMap<string, PositionSet>;
  readonly state: State;
  readonly spoken: SpokenText;
  readonly tokens: readonly RepairedToken[];
  readonly context: DraftContext;
  readonly targets: Targets;
};

/** An item at a place, as claims are kept by. */
export const keyOf = (item: string, position: string): string => `${item}@${position}`;

/** A draft before the first word. */
export const begunDraft = (
  spoken: SpokenText,
  tokens: readonly RepairedToken[],
  context: DraftContext,
): Draft => {
  const items = new Map(
    context.sheet.items
      .filter((item) => applies(item.appliesWhen, context.form))
      .map((item) => [item.id, item]),
  );
  const sets = new Map(context.sheet.positionSets.map((set) => [set.id, set]));
  const remarks = new Map<string, Remark>();
  const state = atFirst();
  const targets = new Targets({
    context,
    spoken,
    tokens,
    items,
    sets,
    inView: () => state,
    hoodIsTop: /^(?:convertible|roadster)$/u.test(context.form.body) && isBritish(tokens),
    isAnswered: (item, position) => remarks.has(keyOf(item, position)),
    wasLast: (item) => state.last.some((key) => key.startsWith(`${item}@`)),
  });
  return { remarks, items, sets, state, spoken, tokens, context, targets };
};

export const wordsOf = ({ tokens }: Draft, { from, to }: { from: number; to: number }): string =>
  stemText(tokens, from, to);

export const lastIs = (draft: Draft, item: string): boolean => {
  return draft.state.last.some((key) => key.startsWith(`${item}@`));
};

export const isPlaced = ({ sides }: Breath): boolean => {
  return sides.adds.length > 0 || sides.other || sides.index !== undefined || sides.all;
};
