/** The term that was said, if it is one of them. */
export const oneOf = <T extends string>(terms: readonly T[], said: unknown): T | undefined =>
  terms.find((term) => term === said);
