import { formatMessage } from "../format-message/index.ts";
import type { PlaceNames, Values } from "../format-message/index.ts";

/** What a message without places needs is nothing. */
type ValuesOf<Template extends string> = [PlaceNames<Template>] extends [never] ? [] : [Values<Template>];

/** The messages of one room, and how they are said. */
export type Messages<Templates extends Readonly<Record<string, string>>> = {
  readonly templates: Templates;
  /** A message with its places filled, each by its name. */
  readonly say: <Id extends keyof Templates & string>(id: Id, ...values: ValuesOf<Templates[Id]>) => string;
};

const catalog = new Map<string, string>();

/**
 * Puts the messages of one room into the catalog, under the room's name, so that they can stand beside what says them.
 *
 * @param templates ICU MessageFormat, in American English
 * @throws {RangeError} when the catalog has another message of that id
 * @example defineMessages("visit", { at: "at {site}" }).say("at", { site: "Uthwick" }) // "at Uthwick"
 */
export const defineMessages = <const Templates extends Readonly<Record<string, string>>>(
  room: string,
  templates: Templates,
): Messages<Templates> => {
  for (const [id, template] of Object.entries(templates)) {
    const [whole, known] = [`${room}.${id}`, catalog.get(`${room}.${id}`)];
    if (known !== undefined && known !== template) throw new RangeError(`${whole} stands twice`);
    catalog.set(whole, template);
  }
  return {
    templates,
    say: (id, ...[values]) => formatMessage<string>(templates[id] ?? id, values ?? {}),
  };
};

/** The catalog: every message of the rooms that were loaded, by its id. */
export const messageCatalog = (): ReadonlyMap<string, string> => catalog;
