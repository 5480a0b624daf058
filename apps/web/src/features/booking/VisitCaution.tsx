import type { VisitPlan } from "@evenhand/shared/http/booking";
import { cautionsOf } from "@evenhand/sheet/cautions-of";
import { useQuery } from "@tanstack/react-query";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { sheetQuery } from "../../entities/sheet/load-sheet";

/** The cautions of everything the visit asks for, in the words of the sheet, as they stand at each task. */
const SheetCautions = ({ plan }: { readonly plan: VisitPlan }) => {
  const t = useText();
  const sheet = useQuery(sheetQuery("evenhand", 1)).data?.sheet;
  if (sheet === undefined) return null;
  const cautions = cautionsOf(
    sheet,
    plan.segments.flatMap(({ items }) => items),
  );
  return (
    <details>
      <summary>{t("plan.caution.sheet", { count: cautions.length })}</summary>
      <ul>
        {cautions.map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
    </details>
  );
};

/** Stands wherever a visit that lifts or drives the car is planned, asked for, confirmed or begun. */
export const VisitCaution = ({ plan }: { readonly plan: VisitPlan }) => {
  const t = useText();
  const lifts = plan.lifts.length > 0;
  const drives = plan.segments.some(({ stage }) => stage === "road");
  if (!lifts && !drives) return null;
  return (
    <Notice kind="caution" title={t("plan.caution")}>
      <ul>
        {lifts && <li>{t("plan.caution.lift")}</li>}
        {drives && <li>{t("plan.caution.road")}</li>}
        <li>{t("plan.caution.law")}</li>
      </ul>
      <SheetCautions plan={plan} />
    </Notice>
  );
};
