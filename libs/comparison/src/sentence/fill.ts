/**
 * A template with its places filled. A place nothing fills stays visible, so that a fault in the catalog is seen.
 *
 * @example fill("{a} and {b}", { a: "left", b: "right" }) // "left and right"
 */
export const fill = (template: string, values: Readonly<Record<string, string>>): string =>
  template.replaceAll(/\{(\w+)\}/g, (place, name: string) => values[name] ?? place);

/** The first letter made a capital and a full stop at the end. */
export const asSentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
