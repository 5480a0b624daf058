import type { StoredSummary, Summary } from "./summary.ts";

/**
 * A stored summary as one of this version: an older one has no matters but those that were to be answered for.
 *
 * @example asSummary(stored).openMatters.map(({ id }) => id) // ["title", "brakes"]
 */
export const asSummary = (stored: StoredSummary): Summary =>
  stored.version === 2
    ? stored
    : {
        ...stored,
        version: 2,
        matters: [],
        broken: [],
        bothBad: [],
        openMatters: stored.openMatters.map(({ matter, severity, lines }) => ({
          id: matter,
          name: matter,
          matters: [matter],
          severity,
          headline: matter.charAt(0).toUpperCase() + matter.slice(1),
          found: "",
          lines,
        })),
      };
