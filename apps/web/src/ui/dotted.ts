/**
 * What there is to say on one line, with a dot between.
 *
 * @example dotted(["Applied", null, "Brakes"]) // "Applied · Brakes"
 */
export const dotted = (parts: readonly (string | null | undefined)[]): string =>
  parts.filter((part) => part !== null && part !== undefined && part !== "").join(" · ");
