import type { FirmHandbook } from "@evenhand/shared/cross-check";
import { Refusal } from "../../service/refusal";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { placeOf } from "./own-handbook";

/** Why the service did not take the figures, each by its name. */
export const SaveProblem = ({ error, sent }: { readonly error: unknown; readonly sent: FirmHandbook }) => {
  const t = useText();
  const problem = error instanceof Refusal ? error.problem : undefined;
  const named = (problem?.problems ?? []).map(({ at, reason }) => ({ place: placeOf(at, sent), reason }));
  if (problem === undefined || named.length === 0) return <ProblemNotice error={error} />;
  return (
    <Notice kind="refusal" title={problem.title}>
      <p>{problem.detail}</p>
      <ul>
        {named.map(({ place, reason }) => (
          <li key={`${place ?? ""}${reason}`}>
            {place === undefined ? reason : t("own.save.refused", { place, reason })}
          </li>
        ))}
      </ul>
    </Notice>
  );
};
