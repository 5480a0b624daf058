import type { RepairedToken } from "@evenhand/lexicon/repair";
import type { Item, PositionSet } from "@evenhand/shared/sheet";
import type { SpokenText } from "../spoken-text/index.ts";
import type { DraftContext } from "./context.ts";

export const hasWords = (text: string, words: string): boolean => ` ${text} `.includes(` ${words} `);

/** What is said, what it is said by, and how far the talk has come. */
export type Talk = {
  readonly context: DraftContext;
  readonly spoken: SpokenText;
  readonly tokens: readonly RepairedToken[];
  readonly items: ReadonlyMap<string, Item>;
  readonly sets: ReadonlyMap<string, PositionSet>;
  /** Whether a list of gauges is gone through, and the side spoken of last. */
  readonly inView: () => {
    readonly gauges: boolean;
    readonly side: string | undefined;
    readonly end: string | undefined;
    readonly startedAt: number;
    readonly trunkAt: number;
    readonly paint: boolean;
    readonly reading: { readonly item: string } | undefined;
    readonly lastAt: number;
  };
  /** Who says bonnet calls a soft top a hood. */
  readonly hoodIsTop: boolean;
  readonly isAnswered: (item: string, position: string) => boolean;
  /** The item was what was answered last. */
  readonly wasLast: (item: string) => boolean;
};
