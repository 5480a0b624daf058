import { Moved } from "@evenhand/shared/http/summaries";
import { z } from "zod";
import { Refusal } from "../../service/refusal";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { MakeSummary } from "./MakeSummary";
import { MovedList } from "./MovedList";

/** A decision refused because something moved carries what moved; the way on is a new summary. */
const WithMoved = z.looseObject({ moved: z.array(Moved).min(1) });

export const DecisionProblem = ({
  error,
  comparison,
}: {
  readonly error: unknown;
  readonly comparison: string;
}) => {
  const t = useText();
  const moved = error instanceof Refusal ? WithMoved.safeParse(error.problem).data?.moved : undefined;
  if (!moved) return <ProblemNotice error={error} />;
  return (
    <Notice kind="refusal" title={t("summary.moved")}>
      <p>{t("summary.moved.what")}</p>
      <MovedList moved={moved} />
      <div>
        <MakeSummary comparison={comparison} again />
      </div>
    </Notice>
  );
};
