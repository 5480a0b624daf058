import type { Matter } from "@evenhand/shared/matter";
import { headline } from "../headline/index.ts";
import type { Reports } from "../headline/index.ts";
import type { JoinedMatter } from "../matters/index.ts";

/**
 * A matter with its words, as it is stored, served and printed. The words follow from the lines and the reports, and are made where
 * somebody reads them.
 *
 * @param matter one of `matters` of these two reports
 * @example inWords(brakes, reports).headline // "The brake pedal sinks"
 */
export const inWords = ({ group, ...matter }: JoinedMatter, reports: Reports): Matter => ({
  ...matter,
  ...headline(group, reports),
});
