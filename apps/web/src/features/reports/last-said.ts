import type { Finding } from "@evenhand/shared/finding";

/** What an item's other places were said with. */
export interface LastSaid {
  /** The last one with an instrument. */
  readonly last: Finding | undefined;
  /** The last one that was read. */
  readonly lastRead: Finding | undefined;
}

export const lastSaid = (said: readonly Finding[]): LastSaid => ({
  last: said.findLast(({ instrument }) => instrument !== undefined),
  lastRead: said.findLast(({ answer }) => answer.kind === "reading"),
});
