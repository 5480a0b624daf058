/** A plain value without its read-only types and without what is `undefined`, as it is stored. */
export function toJson(value: object): object {
  const plain: unknown = JSON.parse(JSON.stringify(value));
  if (typeof plain !== "object" || plain === null) throw new TypeError("only objects are stored");
  return plain;
}
