import { Button } from "@mantine/core";
import type { BriefSeen } from "@evenhand/shared/http/booking";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { capital } from "../sheets/sheet-index";
import { sheetQuery } from "../sheets/load-sheet";
import { useDuration } from "../calendars/use-duration";
import { useCarName } from "../vehicles/CarName";
import { carQuery } from "../vehicles/queries";
import styles from "./Booking.module.css";
import { BriefTotalsPanel } from "./BriefTotalsPanel";
import { ItemPicker } from "./ItemPicker";
import { PlanView, VisitCaution } from "./PlanView";
import { briefQuery } from "./queries";

const route = getRouteApi("/signed-in/cars/$vehicle/brief");

/** What keeps the brief from being planned, each with what would work. */
const BriefProblems = ({ problems }: { readonly problems: BriefSeen["problems"] }) => {
  const t = useText();
  const items = useQuery(sheetQuery("evenhand", 1)).data?.items;
  if (problems.length === 0) return null;
  const worded = (problem: BriefSeen["problems"][number]): string => {
    const id = typeof problem["item"] === "string" ? problem["item"] : "";
    const item = capital(items?.get(id)?.words.american ?? id);
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

const Chooser = ({ brief, vehicle }: { readonly brief: BriefSeen; readonly vehicle: string }) => {
  const t = useText();
  const queries = useQueryClient();
  const navigate = route.useNavigate();
  const duration = useDuration();
  const all = [...brief.items, ...brief.further];
  const [chosen, setChosen] = useState<ReadonlySet<string>>(
    () => new Set(brief.items.filter(({ core }) => !core).map(({ item }) => item)),
  );
  const core = all.filter((one) => one.core);
  const included = all.filter((one) => one.core || chosen.has(one.item));
  const before = new Set(brief.items.map(({ item }) => item));
  const changed = included.length !== before.size || included.some(({ item }) => !before.has(item));
  const save = useMutation({
    mutationFn: () =>
      call("brief.put", {
        params: { id: vehicle },
        ifMatch: brief.revision,
        body: { items: [...chosen] },
      }),
    onSuccess: async (answer) => {
      queries.setQueryData(briefQuery(vehicle).queryKey, answer);
      await queries.invalidateQueries({ queryKey: ["offers"] });
      if (answer.plan !== null) await navigate({ to: "/cars/$vehicle/hours", params: { vehicle } });
    },
    onError: () => queries.invalidateQueries({ queryKey: ["brief", vehicle] }),
  });
  return (
    <div className={styles.columns}>
      <div className={styles.stack}>
        <Panel title={t("brief.further")} hint={t("brief.left-out")}>
          <ItemPicker items={all.filter((one) => !one.core)} chosen={chosen} onChange={setChosen} />
        </Panel>
        <Panel
          title={t("brief.core")}
          hint={t("brief.core.hint", {
            count: core.length,
            time: duration(core.reduce((sum, { minutes }) => sum + minutes, 0)),
          })}
        >
          <details>
            <summary>{t("brief.core.show")}</summary>
            <ItemPicker items={core} />
          </details>
        </Panel>
      </div>
      <div className={styles.side}>
        <BriefTotalsPanel items={included} plan={changed ? null : brief.plan}>
          {save.error !== null && <ProblemNotice error={save.error} />}
          {!changed && <BriefProblems problems={brief.problems} />}
          {changed && <p className={styles.hint}>{t("brief.total.unsaved")}</p>}
          <div>
            <Button size="md" loading={save.isPending} onClick={() => save.mutate()}>
              {t("brief.save")}
            </Button>
          </div>
        </BriefTotalsPanel>
      </div>
      {brief.plan !== null && !changed && (
        <Panel title={t("plan.title")} hint={t("plan.hint")}>
          <VisitCaution plan={brief.plan} />
          <PlanView plan={brief.plan} />
        </Panel>
      )}
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
  const error = car.error ?? brief.error;
  if (error) {
    return (
      <Page title={t("brief.title")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!car.data || !brief.data) return <Loading />;
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
      <Chooser key={brief.data.revision} brief={brief.data} vehicle={vehicle} />
    </Page>
  );
};
