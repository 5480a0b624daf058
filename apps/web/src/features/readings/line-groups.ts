/** Lines that the service takes at once, with all the places each may have. */
export const LINES_AT_ONCE = 200;

/**
 * Settled lines in groups of as many as the service takes at once, none left out, in their order.
 *
 * @example lineGroups(lines).flat().length === lines.length // true
 */
export const lineGroups = <Line>(lines: readonly Line[]): Line[][] =>
  Array.from({ length: Math.ceil(lines.length / LINES_AT_ONCE) }, (_, at) =>
    lines.slice(at * LINES_AT_ONCE, (at + 1) * LINES_AT_ONCE),
  );
