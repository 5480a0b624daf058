import type { Unread } from "../../offline/store";

type Texts = Readonly<Record<string, string>>;

/** Extents typed as what cannot be read, by `extent.<place in the list>`. */
export const extentTexts = (unread: Unread | undefined): Texts =>
  Object.fromEntries(Object.entries(unread?.texts ?? {}).filter(([field]) => field.startsWith("extent.")));

export const withExtentText = (texts: Texts, at: number, text: string | undefined): Texts => {
  const rest = Object.fromEntries(Object.entries(texts).filter(([field]) => field !== `extent.${at}`));
  return text === undefined ? rest : { ...rest, [`extent.${at}`]: text };
};

/** A fault leaves the list and takes its own text with it; those after it move up. */
export const withoutFault = (texts: Texts, at: number): Texts =>
  Object.fromEntries(
    Object.entries(texts).flatMap(([field, text]) => {
      const nth = Number(field.slice("extent.".length));
      if (nth === at) return [];
      return [[`extent.${nth > at ? nth - 1 : nth}`, text]];
    }),
  );
