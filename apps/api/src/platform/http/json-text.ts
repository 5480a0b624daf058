/** An answer that is JSON already, as the database or a store gave it: passed on as it is. */
export class JsonText {
  readonly text: string | Uint8Array;
  readonly etag: string | null;
  constructor(text: string | Uint8Array, etag: string | null = null) {
    this.text = text;
    this.etag = etag;
  }
}

const plain = new WeakSet<Uint8Array>();
/**
 * Keeps bytes from being compressed: what is put together for one person may hold words of another beside what that other must not
 * know, and how short both become together would tell of it.
 */
export const keepPlain = (bytes: Uint8Array): void => void plain.add(bytes);
/** Whether {@link keepPlain} was asked for these bytes. */
export const isKeptPlain = (bytes: Uint8Array): boolean => plain.has(bytes);

const revisionOf = (value: unknown): string | null =>
  typeof value === "object" && value !== null && "revision" in value && typeof value.revision === "number"
    ? String(value.revision)
    : null;

/** What a handler answers, as it goes out. The revision of an object is its entity tag. */
export const toJsonText = (value: unknown): JsonText =>
  value instanceof JsonText ? value : new JsonText(JSON.stringify(value), revisionOf(value));
