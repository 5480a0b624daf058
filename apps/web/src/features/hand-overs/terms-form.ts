import type { HandOverTerms } from "@evenhand/shared/http/hand-overs";
import { instantOf, localOf, ownZone } from "../../entities/time/zone-time";

/** What was agreed, as it stands in its fields. `claimUntil`: day and hour on the reader's own clock. */
export interface TypedTerms {
  readonly deadline: string;
  readonly source: string;
  readonly claimUntil: string;
  readonly risk: string;
}

export const noTerms: TypedTerms = { deadline: "", source: "", claimUntil: "", risk: "" };

/**
 * The terms as they are sent: what was not entered is `null`, never guessed.
 *
 * @example termsOf({ ...noTerms, risk: "On loading" }) // { claimDeadline: null, riskPasses: "On loading" }
 */
export const termsOf = ({ deadline, source, claimUntil, risk }: TypedTerms): HandOverTerms => ({
  claimDeadline:
    deadline.trim() === ""
      ? null
      : {
          words: deadline.trim(),
          source: source.trim(),
          until: claimUntil === "" ? null : instantOf(claimUntil, ownZone()),
        },
  riskPasses: risk.trim() === "" ? null : risk.trim(),
});

/** What stands in the fields for terms that are kept. */
export const typedTerms = ({ claimDeadline, riskPasses }: HandOverTerms): TypedTerms => {
  const until = claimDeadline?.until ?? null;
  return {
    deadline: claimDeadline?.words ?? "",
    source: claimDeadline?.source ?? "",
    claimUntil: until === null ? "" : localOf(until, ownZone()),
    risk: riskPasses ?? "",
  };
};
