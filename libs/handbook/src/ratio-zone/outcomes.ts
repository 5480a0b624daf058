import { breaks, cannotTell, holds } from "../rule-record/index.ts";

/** The ways to a ratio differ only in what they found. */
export const ratioOutcomes = (found: string) => ({
  "claimed-ratio": holds(`{claimed} is the ratio nearest to what was found: ${found}.`),
  "other-ratio": breaks(
    "worth",
    `{claimed} is claimed; what was found is ${found}[: of the maker's, {or:alternatives}].`,
  ),
  "cannot-separate": cannotTell(
    `${found} does not tell the claimed {claimed} from its neighbors[: it allows {or:alternatives}].`,
  ),
  "no-claim": cannotTell(`Found: ${found}[: of the maker's, {or:alternatives}]. No ratio is claimed.`),
});
