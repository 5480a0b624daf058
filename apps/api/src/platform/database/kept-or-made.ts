import type { LRUCache } from "lru-cache";

/** What a cache keeps under the key; where it keeps nothing, what is made now, and kept from then on. */
export async function keptOrMade<V extends object | string>(
  kept: LRUCache<string, V>,
  key: string,
  make: () => V | Promise<V>,
): Promise<V> {
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = await make();
  kept.set(key, made);
  return made;
}
