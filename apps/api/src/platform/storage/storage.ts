/**
 * Where files lie: originals, their copies, and the parts of what is still arriving. Keys are made by the service, never by whoever
 * sends a file. What is put under a key is there whole or not at all; putting it again replaces it.
 */
export abstract class Storage {
  abstract put(key: string, bytes: Uint8Array): Promise<void>;
  /** `null` where nothing lies under the key. */
  abstract read(key: string): Promise<Buffer | null>;
  /** Taking away what is not there is no error. */
  abstract remove(key: string): Promise<void>;
  /** Takes away what somebody who was killed had begun to write before then. @returns how many */
  abstract clearUnfinished(before: Date): Promise<number>;
}

const wellFormed = /^[a-z0-9-]+(\/[a-z0-9-]+)*(\.[a-z0-9]+)?$/;

/** @throws RangeError for a key that is not made of lower-case words, digits and hyphens between slashes */
export function checkKey(key: string): string {
  if (key.length <= 300 && wellFormed.test(key)) return key;
  throw new RangeError(`"${key.slice(0, 80)}" is no key of the storage.`);
}
