import type { WeeklyHours } from "@evenhand/shared/booking";
import { useDebouncedValue } from "@mantine/hooks";
import { keepPreviousData, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { bandsOfTrial } from "./bands";
import { trialQuery } from "../../entities/calendar/queries";
import { useTimes } from "../../entities/time/use-times";
import { WeekView } from "./WeekView";
import { addDays, mondayOf, today } from "../../entities/time/zone-time";

/** How the hours lie in a week while they are being entered. */
export const TrialWeek = ({ hours }: { readonly hours: WeeklyHours }) => {
  const t = useText();
  const times = useTimes();
  const [monday, setMonday] = useState(() => mondayOf(today(hours.zone)));
  const [settled] = useDebouncedValue(hours, 400);
  const trial = useQuery({
    ...trialQuery({ hours: settled, from: monday, until: addDays(monday, 6) }),
    placeholderData: keepPreviousData,
  });
  return (
    <Panel
      title={t("week.title")}
      hint={`${t("week.hint", {
        name: times.zoneName(`${monday}T12:00:00Z`, settled.zone),
        zone: settled.zone.replaceAll("_", " "),
      })} ${t("week.trial")}`}
    >
      {trial.error !== null && <ProblemNotice error={trial.error} />}
      {trial.isPending && <Loading />}
      {trial.data !== undefined && (
        <WeekView monday={monday} zone={settled.zone} bands={bandsOfTrial(trial.data)} onWeek={setMonday} />
      )}
    </Panel>
  );
};
