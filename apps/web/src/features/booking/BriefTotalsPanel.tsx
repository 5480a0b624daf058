import { NEEDS } from "@evenhand/shared/terms";
import type { BriefItem } from "@evenhand/shared/booking";
import type { VisitPlan } from "@evenhand/shared/http/booking";
import type { ReactNode } from "react";
import { useText } from "../../strings/text";
import { Facts, Panel } from "../../ui/Page";
import { useDuration } from "../../entities/time/use-duration";

interface Props {
  readonly items: readonly BriefItem[];
  /** `null` while what is chosen is not saved, or cannot be planned. */
  readonly plan: VisitPlan | null;
  readonly children: ReactNode;
}

/** Minutes in all and by need, of what is ticked at this moment. */
export const BriefTotalsPanel = ({ items, plan, children }: Props) => {
  const t = useText();
  const duration = useDuration();
  const sum = (some: Props["items"]): number => some.reduce((all, { minutes }) => all + minutes, 0);
  const rows: (readonly [ReactNode, ReactNode])[] = [
    [t("brief.total.items.term"), t("brief.total.items", { count: items.length })],
    [t("brief.total.time.term"), duration(sum(items))],
    ...NEEDS.map((need) => [need, sum(items.filter((one) => one.needs.includes(need)))] as const)
      .filter(([, minutes]) => minutes > 0)
      .map(
        ([need, minutes]) => [t("brief.total.need", { need: t(`need.${need}`) }), duration(minutes)] as const,
      ),
  ];
  if (plan !== null) rows.push([t("brief.total.plan.term"), duration(plan.minutes)]);
  return (
    <Panel title={t("brief.total")}>
      <div aria-live="polite">
        <Facts rows={rows} />
      </div>
      {children}
    </Panel>
  );
};
