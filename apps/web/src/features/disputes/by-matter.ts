import type { Release, ReleasedMatter } from "@evenhand/shared/http/releases";
import { severityRank } from "@evenhand/shared/severity";

/** Items of one comparison that belong to one matter, as the items themselves say. */
export interface ReleasedGroup {
  readonly key: string;
  readonly matter: ReleasedMatter | null;
  readonly releases: readonly Release[];
}

const rank = ({ matter }: ReleasedGroup): number =>
  matter === null ? Infinity : severityRank(matter.severity);

/**
 * Released items by the matter they belong to, the gravest first; within one as they come.
 *
 * @example byMatter(releases)[0]?.matter?.headline // "The brake pedal sinks"
 */
export const byMatter = (releases: readonly Release[]): ReleasedGroup[] => {
  const groups = Map.groupBy(releases, ({ comparison, matter }) => `${comparison} ${matter?.id ?? ""}`);
  return [...groups]
    .map(([key, of]): ReleasedGroup => ({ key, matter: of[0]?.matter ?? null, releases: of }))
    .toSorted((a, b) => rank(a) - rank(b));
};
