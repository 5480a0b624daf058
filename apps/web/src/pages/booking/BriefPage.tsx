import { Button, Radio } from "@mantine/core";
import type { BriefSeen } from "@evenhand/shared/http/booking";
import { Depth, DEPTHS } from "@evenhand/shared/sheet";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { capital, itemWords, type SheetIndex } from "../../entities/sheet/sheet-index";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { useDuration } from "../../entities/time/use-duration";
import { useCarName } from "../../entities/car/CarName";
import { carQuery } from "../../entities/car/queries";
import styles from "../../features/booking/Booking.module.css";
import { chosenOf, coreOf, isSame, itemsOf, minutesOf, wishedOf } from "../../features/booking/brief-wish";
import { BriefTotalsPanel } from "../../features/booking/BriefTotalsPanel";
import { ItemPicker } from "../../features/booking/ItemPicker";
import { LookFirstPanel } from "../../features/booking/LookFirstPanel";
import { PlanView } from "../../features/booking/PlanView";
import { VisitCaution } from "../../features/booking/VisitCaution";
import { briefQuery } from "../../entities/appointment/queries";

const route = getRouteApi("/signed-in/cars/$vehicle/brief");

/** What keeps the brief from being planned, each with what would work. */
const BriefProblems = ({ problems }: { readonly problems: BriefSeen["problems"] }) => {
  const t = useText();
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  if (problems.length === 0) return null;
  const worded = (problem: BriefSeen["problems"][number]): string => {
    const id = typeof problem["item"] === "string" ? problem["item"] : "";
    const item = capital(itemWords(index, id));
    switch (problem.code) {
      case "nothing-chosen":
      case "road-without-gate":
        return t(`brief.problem.${problem.code}`);
      case "stage-against-needs":
      case "impossible-minutes":
        return t(`brief.problem.${problem.code}`, { item });
      default:
        return t("brief.problem.other");
    }
  };
  return (
    <Notice kind="refusal" title={t("brief.problem.title")}>
      <ul>
        {problems.map((problem) => (
          <li key={worded(problem)}>{worded(problem)}</li>
        ))}
      </ul>
    </Notice>
  );
};

/** What is wanted at this moment: a depth, and items beside it. */
const useWish = (brief: BriefSeen, index: SheetIndex) => {
  const [depth, setDepth] = useState(brief.depth);
  const [chosen, setChosen] = useState(() => chosenOf(brief));
  const items = itemsOf(brief, index);
  const wished = wishedOf(items, depth, chosen);
  return {
    depth,
    setDepth,
    chosen,
    setChosen,
    ...wished,
    possible: new Set(items.map(({ id }) => id)),
    add: (more: readonly string[]) => setChosen(new Set([...chosen, ...more])),
    isChanged: depth !== brief.depth || !isSame(wished.included, brief.items),
    minutesAt: (one: Depth) => minutesOf(coreOf(items, one)),
  };
};
type Wish = ReturnType<typeof useWish>;

const DepthChoice = ({
  depth,
  onDepth,
  minutesAt,
}: {
  readonly depth: Depth;
  readonly onDepth: (depth: Depth) => void;
  readonly minutesAt: (depth: Depth) => number;
}) => {
  const t = useText();
  const duration = useDuration();
  return (
    <Radio.Group aria-label={t("brief.depth")} value={depth} onChange={(one) => onDepth(Depth.parse(one))}>
      <div className={styles.part}>
        {DEPTHS.map((one) => (
          <Radio
            key={one}
            size="md"
            value={one}
            label={t("brief.depth.one", { depth: t(`brief.depth.${one}`), time: duration(minutesAt(one)) })}
            description={t(`brief.depth.${one}.what`)}
          />
        ))}
      </div>
    </Radio.Group>
  );
};

interface ChooserProps {
  readonly brief: BriefSeen;
  readonly vehicle: string;
  readonly index: SheetIndex;
}

const useSave = (brief: BriefSeen, vehicle: string) => {
  const queries = useQueryClient();
  const navigate = route.useNavigate();
  return useMutation({
    mutationFn: (body: { depth: Depth; items: string[] }) =>
      call("brief.put", { params: { id: vehicle }, ifMatch: brief.revision, body }),
    onSuccess: async (answer) => {
      queries.setQueryData(briefQuery(vehicle).queryKey, answer);
      await queries.invalidateQueries({ queryKey: ["offers"] });
      if (answer.plan !== null) await navigate({ to: "/cars/$vehicle/hours", params: { vehicle } });
    },
    onError: () => queries.invalidateQueries({ queryKey: ["brief", vehicle] }),
  });
};

interface ShownProps {
  readonly brief: BriefSeen;
  readonly wish: Wish;
}

/** A depth, with what it takes in for certain. */
const DepthPanel = ({ wish }: Pick<ShownProps, "wish">) => {
  const t = useText();
  const duration = useDuration();
  const { core } = wish;
  return (
    <Panel title={t("brief.depth")} hint={t("brief.left-out")}>
      <DepthChoice depth={wish.depth} onDepth={wish.setDepth} minutesAt={wish.minutesAt} />
      <details>
        <summary>{t("brief.core.show", { count: core.length, time: duration(minutesOf(core)) })}</summary>
        <ItemPicker items={core} />
      </details>
    </Panel>
  );
};

/** A depth, what is proposed first, and what may be chosen beside it. */
const Choices = ({ wish, vehicle, index }: Omit<ChooserProps, "brief"> & Pick<ShownProps, "wish">) => {
  const t = useText();
  return (
    <div className={styles.stack}>
      <DepthPanel wish={wish} />
      <LookFirstPanel
        vehicle={vehicle}
        index={index}
        included={new Set(wish.included.map(({ item }) => item))}
        possible={wish.possible}
        onAdd={wish.add}
      />
      <Panel title={t("brief.further")}>
        <ItemPicker items={wish.pickable} chosen={wish.chosen} onChange={wish.setChosen} />
      </Panel>
    </div>
  );
};

const Totals = ({ brief, wish, vehicle }: ShownProps & { readonly vehicle: string }) => {
  const t = useText();
  const save = useSave(brief, vehicle);
  const { depth, included, further, isChanged } = wish;
  return (
    <div className={styles.side}>
      <BriefTotalsPanel items={included} plan={isChanged ? null : brief.plan}>
        {save.error !== null && <ProblemNotice error={save.error} />}
        {!isChanged && <BriefProblems problems={brief.problems} />}
        {isChanged && <p className={styles.hint}>{t("brief.total.unsaved")}</p>}
        <div>
          <Button size="md" loading={save.isPending} onClick={() => save.mutate({ depth, items: further })}>
            {t("brief.save")}
          </Button>
        </div>
      </BriefTotalsPanel>
    </div>
  );
};

const PlanPanel = ({ plan }: { readonly plan: NonNullable<BriefSeen["plan"]> }) => {
  const t = useText();
  return (
    <Panel title={t("plan.title")} hint={t("plan.hint")}>
      <VisitCaution plan={plan} />
      <PlanView plan={plan} />
    </Panel>
  );
};

const Chooser = ({ brief, vehicle, index }: ChooserProps) => {
  const wish = useWish(brief, index);
  return (
    <div className={styles.columns}>
      <Choices wish={wish} vehicle={vehicle} index={index} />
      <Totals brief={brief} wish={wish} vehicle={vehicle} />
      {brief.plan !== null && !wish.isChanged && <PlanPanel plan={brief.plan} />}
    </div>
  );
};

/** The buyer chooses what is looked at, item by item, with minutes and needs in sight. */
export const BriefPage = () => {
  const t = useText();
  const name = useCarName();
  const { vehicle } = route.useParams();
  const car = useQuery(carQuery(vehicle));
  const brief = useQuery(briefQuery(vehicle));
  const sheet = useQuery(sheetQuery("evenhand", 1));
  const error = car.error ?? brief.error ?? sheet.error;
  if (error) {
    return (
      <Page title={t("brief.title")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!car.data || !brief.data || !sheet.data) return <Loading />;
  return (
    <Page
      title={t("brief.title")}
      under={t("brief.under")}
      over={
        <Link to="/cars/$vehicle" params={{ vehicle }}>
          {name(car.data.vehicle)}
        </Link>
      }
    >
      <Chooser key={brief.data.revision} brief={brief.data} vehicle={vehicle} index={sheet.data} />
    </Page>
  );
};
