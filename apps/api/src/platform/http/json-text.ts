/** An answer that is JSON already, as the database or a store gave it: passed on as it is. */
export class JsonText {
  readonly text: string | Uint8Array;
  readonly etag: string | null;
  constructor(text: string | Uint8Array, etag: string | null = null) {
    this.text = text;
    this.etag = etag;
  }
}

const revisionOf = (value: unknown): string | null =>
  typeof value === "object" && value !== null && "revision" in value && typeof value.revision === "number"
    ? String(value.revision)
    : null;

/** What a handler answers, as it goes out. The revision of an object is its entity tag. */
export const toJsonText = (value: unknown): JsonText =>
  value instanceof JsonText ? value : new JsonText(JSON.stringify(value), revisionOf(value));
