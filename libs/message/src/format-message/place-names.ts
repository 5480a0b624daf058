/** The next brace of a text: which one, and what stands behind it. */
type NextBrace<Text extends string> = Text extends `${infer Before}{${infer Behind}`
  ? Before extends `${infer Closed}}${string}`
    ? Text extends `${Closed}}${infer Rest}`
      ? ["}", Rest]
      : never
    : ["{", Behind]
  : Text extends `${string}}${infer Rest}`
    ? ["}", Rest]
    : undefined;

type Trimmed<Text extends string> = Text extends ` ${infer Rest}`
  ? Trimmed<Rest>
  : Text extends `${infer Rest} `
    ? Trimmed<Rest>
    : Text;

type NameOf<Head extends string> = Trimmed<Head extends `${infer Name},${string}` ? Name : Head>;

/** In a text, `Depth` options deep. */
type InText<Text extends string, Depth extends readonly unknown[], Found extends string> =
  NextBrace<Text> extends [infer Brace, infer Rest extends string]
    ? Brace extends "{"
      ? InPlace<Rest, Depth, Found>
      : AfterOption<Rest, Depth, Found>
    : Found;

/** Behind the brace that opens a place: a plain one ends before another opens, one with options does not. */
type InPlace<
  Text extends string,
  Depth extends readonly unknown[],
  Found extends string,
> = Text extends `${infer Inside}}${infer Rest}`
  ? Inside extends `${infer Head}{${string}`
    ? Text extends `${Head}{${infer Option}`
      ? InText<Option, [...Depth, 1], Found | NameOf<Head>>
      : never
    : InText<Rest, Depth, Found | NameOf<Inside>>
  : Found;

/** Behind an option: another one opens, or the place ends. */
type AfterOption<Text extends string, Depth extends readonly unknown[], Found extends string> =
  NextBrace<Text> extends [infer Brace, infer Rest extends string]
    ? Brace extends "{"
      ? InText<Rest, Depth, Found>
      : Depth extends readonly [...infer Outer, unknown]
        ? InText<Rest, Outer, Found>
        : Found
    : Found;

/**
 * The names of the places an ICU message fills, read from its text by the compiler.
 *
 * @example PlaceNames<"{count, plural, one {# day} other {# days}} at {site}"> // "count" | "site"
 */
export type PlaceNames<Template extends string> = Template extends unknown
  ? string extends Template
    ? string
    : InText<Template, [], never>
  : never;
