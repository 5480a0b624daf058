import type { QuestionSeen } from "@evenhand/shared/http/questions";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { documentQuery } from "../../entities/report/queries";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { answerFinding, begunAnswer, type AnswerForm } from "./answer-form";

export interface Asked {
  readonly question: QuestionSeen;
  readonly car: VehicleDetail;
}

/** The revision of the finding that stands in the dealer's draft on this place, which the answer takes the place of. */
const useStanding = ({ question, car }: Asked) => {
  const draft = car.drafts.find(({ kind }) => kind === "statement");
  const open = useQuery({
    queryKey: ["report", draft?.id, "findings"],
    enabled: draft !== undefined,
    queryFn: ({ signal }) => call("reports.get", { params: { id: draft?.id ?? "" }, signal }),
  });
  const standing = open.data?.findings.find(
    (one) => one.item === question.item && one.position === question.position,
  );
  return { ready: draft === undefined || open.data !== undefined, base: standing?.revision ?? null };
};

/** The item asked about, its sheet, and the dealer's own scales. */
export const useAskedItem = ({ question, car }: Asked) => {
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  const scales = useQuery({
    ...documentQuery(car.statements[0]?.id ?? ""),
    enabled: car.statements.length > 0,
  }).data?.scales;
  return { index, item: index?.items.get(question.item), scales: scales ?? [] };
};

/** An answer being written, and giving it. */
export const useAnswering = ({ question, car }: Asked) => {
  const queries = useQueryClient();
  const { ready, base } = useStanding({ question, car });
  const [form, setForm] = useState(begunAnswer);
  const put = useMutation({
    mutationFn: () =>
      call("questions.answer", {
        params: { id: question.id },
        ifMatch: question.revision,
        body: { finding: answerFinding(question, form), base, seal: form.seal },
      }),
    onSuccess: () => queries.invalidateQueries(),
    onError: () => queries.invalidateQueries({ queryKey: ["report"] }),
  });
  const change = (part: Partial<AnswerForm>): void => setForm((now) => ({ ...now, ...part }));
  return { ready, form, change, put };
};
