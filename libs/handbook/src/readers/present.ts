import type { Found } from "../view/index.ts";

/** The values that are there. */
export const present = <T>(values: readonly (T | undefined)[]): T[] => {
  const there: T[] = [];
  for (const value of values) if (value !== undefined) there.push(value);
  return there;
};

/** What several things were read from, one after the other. */
export const joinedReads = (several: readonly { readonly reads: readonly Found[] }[]): Found[] => {
  const all: Found[] = [];
  for (const { reads } of several) for (const read of reads) all.push(read);
  return all;
};
