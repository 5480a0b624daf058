import { breaks, cannotTell, holds } from "../rule-record/index.ts";

/** The ways to a ratio differ only in what they found. */
export const ratioOutcomes = (found: string) => ({
  "claimed-ratio": holds(`{claimed} is the ratio nearest to what was found: ${found}.`),
  "other-ratio": breaks(
    "worth",
    `{claimed} is claimed; what was found is ${found}{anyAlternative, select, none {} other {: of the maker's, {anyAlternative}}}.`,
  ),
  "cannot-separate": cannotTell(
    `${found} does not tell the claimed {claimed} from its neighbors{anyAlternative, select, none {} other {: it allows {anyAlternative}}}.`,
  ),
  "no-claim": cannotTell(
    `Found: ${found}{anyAlternative, select, none {} other {: of the maker's, {anyAlternative}}}. No ratio is claimed.`,
  ),
});
