import { IntlMessageFormat } from "intl-messageformat";
import type { PlaceNames } from "./place-names.ts";

export type { PlaceNames } from "./place-names.ts";

/** The language of the catalog. Another one is another catalog of the same ids. */
export const LANGUAGE = "en-US";

/** What fills the places of a message, by name. */
export type Values<Template extends string = string> = Readonly<
  Record<PlaceNames<Template>, string | number>
>;

/** Reading a message takes a hundred times as long as filling it, and there are as many as the catalog has. */
const compiled = new Map<string, IntlMessageFormat>();

const compiledOf = (template: string): IntlMessageFormat => {
  const known = compiled.get(template);
  if (known !== undefined) return known;
  const message = new IntlMessageFormat(template, LANGUAGE, undefined, { ignoreTag: true });
  compiled.set(template, message);
  return message;
};

type Element = ReturnType<IntlMessageFormat["getAst"]>[number];

/** What the numbers of a plain text and of a plain place mean in an ICU message's tree (`TYPE` of its parser). */
const PLAIN_TEXT = 0;
const PLAIN_PLACE = 1;

/** A piece of a message that is nothing but texts and plain places: the text itself, or the name of what fills the place. */
type Piece = { readonly text: string } | { readonly place: string };

const pieceOf = (element: Element): Piece | undefined => {
  const type: number = element.type;
  if (!("value" in element) || typeof element.value !== "string") return undefined;
  if (type === PLAIN_TEXT) return { text: element.value };
  return type === PLAIN_PLACE ? { place: element.value } : undefined;
};

const pieces = new Map<string, readonly Piece[] | null>();

/** The pieces of a message; `null` where it counts or chooses. */
const piecesOf = (template: string): readonly Piece[] | null => {
  const known = pieces.get(template);
  if (known !== undefined) return known;
  const read = compiledOf(template).getAst().map(pieceOf);
  const plain = read.filter((piece) => piece !== undefined);
  const made = plain.length === read.length ? plain : null;
  pieces.set(template, made);
  return made;
};

/** The pieces put together, many times as fast as the library does it; `undefined` where a place is not filled. */
const joined = (plain: readonly Piece[], values: Values): string | undefined => {
  let said = "";
  for (const piece of plain) {
    const filling = "text" in piece ? piece.text : values[piece.place];
    if (filling === undefined) return undefined;
    said += filling;
  }
  return said;
};

/**
 * A message of ICU MessageFormat with its places filled. What fills them stands as it is and is never read as a message.
 *
 * @throws {Error} when a place is not filled, or the template is none
 * @example formatMessage("{count, plural, one {# day} other {# days}}", { count: 2 }) // "2 days"
 */
export const formatMessage = <const Template extends string>(
  template: Template,
  values: Values<Template>,
): string => {
  const plain = piecesOf(template);
  const said = plain === null ? undefined : joined(plain, values);
  return said ?? String(compiledOf(template).format(values));
};

const optionsOf = (element: Element): readonly (readonly [string, readonly Element[]])[] =>
  "options" in element
    ? Object.entries(element.options).map(([word, { value }]) => [word, value] as const)
    : [];

/** A place of a message; inside a choice it is needed only where that is taken, and by a choice with `none` it may be left out. */
type Place = { readonly name: string; readonly isInside: boolean; readonly mayBeLeftOut: boolean };

const placesIn = (elements: readonly Element[], isInside: boolean): readonly Place[] =>
  elements.flatMap((element) => {
    const options = optionsOf(element);
    const inside = options.flatMap(([, elementsOfOption]) => placesIn(elementsOfOption, true));
    const type: number = element.type;
    if (!("value" in element) || typeof element.value !== "string" || type === PLAIN_TEXT) return inside;
    const mayBeLeftOut = options.some(([word]) => word === LEFT_OUT);
    return [{ name: element.value, isInside, mayBeLeftOut }, ...inside];
  });

/** What stands for a place that has nothing to say, where a message has an option of that name. */
export const LEFT_OUT = "none";

/** The names of a message's places, each once. */
export type Places = {
  readonly all: readonly string[];
  /** A `select` by them has an option `none`. */
  readonly optional: readonly string[];
  /** Without these there is no sentence, whichever option is taken. */
  readonly required: readonly string[];
};

const namesOf = (places: readonly Place[]): readonly string[] => [...new Set(places.map(({ name }) => name))];

const known = new Map<string, Places>();

/**
 * The places of a message, those that may be left out, and those it cannot do without.
 *
 * @example placesOf("{a}{b, select, none {} other { ({b} of {c})}}")
 * // { all: ["a", "b", "c"], optional: ["b"], required: ["a"] }
 */
export const placesOf = (template: string): Places => {
  const cached = known.get(template);
  if (cached !== undefined) return cached;
  const places = placesIn(compiledOf(template).getAst(), false);
  const optional = namesOf(places.filter(({ mayBeLeftOut }) => mayBeLeftOut));
  const required = namesOf(places.filter(({ name, isInside }) => !isInside && !optional.includes(name)));
  const made = { all: namesOf(places), optional, required };
  known.set(template, made);
  return made;
};
