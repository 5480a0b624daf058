import type { VisitPlan } from "@evenhand/shared/http/booking";
import { useText } from "../../strings/text";
import { Tag } from "../../ui/Page";
import { useDuration } from "../../entities/time/use-duration";
import { useTimes } from "../../entities/time/use-times";
import { useItemWords } from "../../entities/sheet/item-words";
import styles from "./PlanView.module.css";

interface Props {
  readonly plan: VisitPlan;
  /** Where the start is known: its instant and the site's zone. */
  readonly start?: string;
  readonly zone?: string;
  readonly nameOf?: (car: string) => string;
}

type Segment = VisitPlan["segments"][number];

const MINUTE = 60_000;

/** From when until when: on the site's clock where the start is known, else after it. */
const useSpan = ({ start, zone = "UTC" }: Props): ((segment: Segment) => string) => {
  const t = useText();
  const duration = useDuration();
  const times = useTimes();
  return ({ from, to }) => {
    if (start === undefined) return t("plan.after", { from: duration(from), to: duration(to) });
    const at = (minutes: number): string => new Date(Date.parse(start) + minutes * MINUTE).toISOString();
    return times.range(at(from), at(to), zone);
  };
};

/** Something of a car, with the car's name where the visit has several. */
const ofCar = ({ plan, nameOf }: Props, what: string, car: string): string => {
  const cars = new Set(plan.segments.map((segment) => segment.car));
  return cars.size > 1 && nameOf !== undefined ? `${what}, ${nameOf(car)}` : what;
};

/** Its part of the visit, drawn to scale. */
const SegmentBar = ({
  segment: { from, to, lift },
  minutes,
}: {
  readonly segment: Segment;
  readonly minutes: number;
}) => (
  <span className={styles.bar} aria-hidden="true">
    <span
      data-lift={lift}
      style={{ left: `${(from / minutes) * 100}%`, width: `${((to - from) / minutes) * 100}%` }}
    />
  </span>
);

const SegmentLine = ({ segment, ...view }: Props & { readonly segment: Segment }) => {
  const t = useText();
  const span = useSpan(view);
  const { car, stage, lift, daylight, items } = segment;
  return (
    <li>
      <span className={`${styles.time} figures`}>{span(segment)}</span>
      <SegmentBar segment={segment} minutes={view.plan.minutes} />
      <span className={styles.what}>
        <span className={styles.stage}>{ofCar(view, t(`stage.${stage}`), car)}</span>
        {items.length > 0 && <span className={styles.items}>{t("plan.items", { count: items.length })}</span>}
        {lift && <Tag>{t("plan.lift")}</Tag>}
        {daylight && <Tag>{t("plan.daylight")}</Tag>}
      </span>
    </li>
  );
};

/** What the dealer is asked to allow. */
const ToAllow = (view: Props) => {
  const t = useText();
  const words = useItemWords();
  const { toAllow } = view.plan;
  if (toAllow.length === 0) return null;
  return (
    <div>
      <h3>{t("plan.allow")}</h3>
      <ul>
        {toAllow.map(({ car, item }) => (
          <li key={`${car}${item}`}>{ofCar(view, words({ item, position: "" }), car)}</li>
        ))}
      </ul>
    </div>
  );
};

/** The stages in their order, each with its time, what it needs and its part of the visit drawn to scale. */
export const PlanView = (view: Props) => {
  const t = useText();
  const duration = useDuration();
  const { plan } = view;
  return (
    <>
      <ol className={styles.plan}>
        {plan.segments.map((segment) => (
          <SegmentLine key={`${segment.car}${segment.stage}`} segment={segment} {...view} />
        ))}
      </ol>
      <p>{t("plan.total", { time: duration(plan.minutes) })}</p>
      <ToAllow {...view} />
    </>
  );
};
