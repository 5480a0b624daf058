import { Refusal } from "../service/refusal";
import { useText } from "../strings/text";
import { Notice } from "./Notice";

/** What was refused, why, and what would work, as the service says it. */
export const ProblemNotice = ({ error }: { readonly error: unknown }) => {
  const t = useText();
  if (!(error instanceof Refusal)) {
    return (
      <Notice kind="refusal" title={t("problem.unexpected")}>
        <p>{t("problem.unexpected.what")}</p>
      </Notice>
    );
  }
  const { problem } = error;
  if (problem.type === "unreachable") {
    return (
      <Notice kind="refusal" title={t("problem.offline")}>
        <p>{t("problem.offline.what")}</p>
      </Notice>
    );
  }
  return (
    <Notice kind="refusal" title={problem.title}>
      <p>{problem.detail}</p>
      {problem.problems && problem.problems.length > 0 && (
        <ul>
          {problem.problems.map(({ at, reason }) => (
            <li key={`${at}${reason}`}>{reason}</li>
          ))}
        </ul>
      )}
    </Notice>
  );
};
