import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import { ofBrief, visitOf } from "@evenhand/sheet/visit-of";
import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { useDuration } from "../../entities/time/use-duration";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { carQuery, orderQuery } from "../../entities/car/queries";
import styles from "./PlanView.module.css";

type Visit = AppointmentSeen["visits"][number];

interface Props {
  readonly visit: Visit;
  /** The car, where the visit has several. */
  readonly car: string | undefined;
  readonly isInspector: boolean;
}

/** The inspector's draft of this visit, once there is one. */
const useDraftOf = (order: string | null, isInspector: boolean): string | undefined => {
  const query = useQuery({ ...orderQuery(order ?? ""), enabled: order !== null && isInspector });
  const report = query.data?.report;
  return report?.drafting === true ? report.id : undefined;
};

type Stage = ReturnType<typeof visitOf>[number];

/** A stage; it opens the form there where there is a draft. */
const StageLine = ({ stage, draft }: { readonly stage: Stage; readonly draft: string | undefined }) => {
  const t = useText();
  const duration = useDuration();
  const name = t(`walk.stage.${stage.stage}`);
  return (
    <li>
      {draft === undefined ? (
        <span>{name}</span>
      ) : (
        <Link to="/reports/$report" params={{ report: draft }} search={{ stage: stage.stage }}>
          {name}
        </Link>
      )}
      <span className="figures">
        {t("plan.sheet.stage", {
          count: stage.stops.reduce((sum, { lines }) => sum + lines.length, 0),
          time: duration(Math.ceil(stage.minutes)),
        })}
      </span>
    </li>
  );
};

/** The stages of the sheet as this visit walks them; each opens the form there, for whoever fills it. */
export const SheetStages = ({ visit, car, isInspector }: Props) => {
  const t = useText();
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  const vehicle = useQuery({ ...carQuery(visit.vehicle), enabled: visit.brief !== null }).data?.vehicle;
  const draft = useDraftOf(visit.order, isInspector);
  if (index === undefined || vehicle === undefined || visit.brief === null) return null;
  const stages = visitOf(index.sheet, vehicle.form, ofBrief(visit.brief.items));
  return (
    <div>
      <h3>{car === undefined ? t("plan.sheet") : t("plan.sheet.of", { car })}</h3>
      {isInspector && draft === undefined && <p className={styles.hint}>{t("plan.sheet.later")}</p>}
      <ol className={styles.stages}>
        {stages.map((stage) => (
          <StageLine key={stage.stage} stage={stage} draft={draft} />
        ))}
      </ol>
    </div>
  );
};
