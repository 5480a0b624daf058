import canonicalize from "canonicalize";

/**
 * The one way to write a JSON value down (RFC 8785, JSON Canonicalization Scheme): keys in order of their UTF-16 code units, no
 * blanks, numbers as ECMAScript writes them. Two equal values give the same text, so their hash is the same too.
 * Keys whose value is `undefined` are left out, as in JSON.
 *
 * @param value plain JSON data
 * @throws {TypeError} for what JSON cannot say: `undefined`, a function, NaN, an infinity
 * @example canonicalJson({ b: 2, a: [1.0, "x"] }) // '{"a":[1,"x"],"b":2}'
 */
export const canonicalJson = (value: unknown): string => {
  let text: string | undefined;
  try {
    text = canonicalize(value);
  } catch (error) {
    throw new TypeError("This value cannot be written as JSON.", { cause: error });
  }
  if (text === undefined) throw new TypeError("This value cannot be written as JSON.");
  return text;
};
