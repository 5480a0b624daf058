import type { UseQueryResult } from "@tanstack/react-query";
import type { ReactNode } from "react";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useTimes } from "../../entities/time/use-times";
import type { Band } from "./bands";
import { WeekView } from "./WeekView";

interface Props<Days> {
  readonly monday: string;
  readonly zone: string;
  readonly days: UseQueryResult<Days>;
  readonly bandsOf: (days: Days) => readonly Band[];
  readonly onWeek: (monday: string) => void;
  /** What is to be known of the week besides its clock. */
  readonly note?: string;
  readonly actions?: ReactNode;
}

/** A week read from the service, on the clock of a zone. */
export const WeekPanel = <Days,>({ days, bandsOf, note, actions, ...week }: Props<Days>) => {
  const t = useText();
  const times = useTimes();
  const { monday, zone } = week;
  const clock = t("week.hint", {
    name: times.zoneName(`${monday}T12:00:00Z`, zone),
    zone: zone.replaceAll("_", " "),
  });
  return (
    <Panel title={t("week.title")} hint={note === undefined ? clock : `${clock} ${note}`} actions={actions}>
      {days.error !== null && <ProblemNotice error={days.error} />}
      {days.isPending && <Loading />}
      {days.data !== undefined && <WeekView {...week} bands={bandsOf(days.data)} />}
    </Panel>
  );
};
