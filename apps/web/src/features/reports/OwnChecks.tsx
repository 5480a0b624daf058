import type { CrossCheck } from "@evenhand/shared/cross-check";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { checkSentence, checkTitle } from "../../entities/comparison/sentences";

/** What the figures themselves give away, said at the field. It never blocks: an old plate may be wrong, and that is a finding. */
export const OwnChecks = ({ checks }: { readonly checks: readonly CrossCheck[] }) => {
  const t = useText();
  if (checks.length === 0) return null;
  return (
    <Notice kind="note" title={t("place.checks")}>
      <ul>
        {checks.map((check) => (
          <li
            key={`${check.rule}${check.reason}${check.reads.map(({ item, position }) => item + position).join()}`}
          >
            {checkTitle(check)}: {checkSentence(check)}
          </li>
        ))}
      </ul>
      <p>{t("place.checks.hint")}</p>
    </Notice>
  );
};
