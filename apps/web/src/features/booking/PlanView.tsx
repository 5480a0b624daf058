import type { VisitPlan } from "@evenhand/shared/http/booking";
import { cautionsOf } from "@evenhand/sheet/cautions-of";
import { useQuery } from "@tanstack/react-query";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Tag } from "../../ui/Page";
import { useDuration } from "../../entities/time/use-duration";
import { useTimes } from "../../entities/time/use-times";
import { useItemWords } from "../../entities/sheet/item-words";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import styles from "./PlanView.module.css";

interface Props {
  readonly plan: VisitPlan;
  /** Where the start is known: its instant and the site's zone. */
  readonly start?: string;
  readonly zone?: string;
  readonly nameOf?: (car: string) => string;
}

const MINUTE = 60_000;

/** The stages in their order, each with its time, what it needs and its part of the visit drawn to scale. */
export const PlanView = ({ plan, start, zone = "UTC", nameOf }: Props) => {
  const t = useText();
  const duration = useDuration();
  const times = useTimes();
  const words = useItemWords();
  const cars = new Set(plan.segments.map(({ car }) => car));
  const ofCar = (what: string, car: string): string =>
    cars.size > 1 && nameOf !== undefined ? `${what}, ${nameOf(car)}` : what;
  const span = (from: number, to: number): string => {
    if (start === undefined) return t("plan.after", { from: duration(from), to: duration(to) });
    const at = (minutes: number): string => new Date(Date.parse(start) + minutes * MINUTE).toISOString();
    return times.range(at(from), at(to), zone);
  };
  return (
    <>
      <ol className={styles.plan}>
        {plan.segments.map(({ car, stage, from, to, lift, daylight, items }) => (
          <li key={`${car}${stage}`}>
            <span className={`${styles.time} figures`}>{span(from, to)}</span>
            <span className={styles.bar} aria-hidden="true">
              <span
                data-lift={lift}
                style={{
                  left: `${(from / plan.minutes) * 100}%`,
                  width: `${((to - from) / plan.minutes) * 100}%`,
                }}
              />
            </span>
            <span className={styles.what}>
              <span className={styles.stage}>{ofCar(t(`stage.${stage}`), car)}</span>
              {items.length > 0 && (
                <span className={styles.items}>{t("plan.items", { count: items.length })}</span>
              )}
              {lift && <Tag>{t("plan.lift")}</Tag>}
              {daylight && <Tag>{t("plan.daylight")}</Tag>}
            </span>
          </li>
        ))}
      </ol>
      <p>{t("plan.total", { time: duration(plan.minutes) })}</p>
      {plan.toAllow.length > 0 && (
        <div>
          <h3>{t("plan.allow")}</h3>
          <ul>
            {plan.toAllow.map(({ car, item }) => (
              <li key={`${car}${item}`}>{ofCar(words({ item, position: "" }), car)}</li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
};

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
