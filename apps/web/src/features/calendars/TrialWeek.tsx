import type { WeeklyHours } from "@evenhand/shared/booking";
import { useDebouncedValue } from "@mantine/hooks";
import { keepPreviousData, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { useText } from "../../strings/text";
import { bandsOfTrial } from "./bands";
import { trialQuery } from "../../entities/calendar/queries";
import { addDays, mondayOf, today } from "../../entities/time/zone-time";
import { WeekPanel } from "./WeekPanel";

/** How the hours lie in a week while they are being entered. */
export const TrialWeek = ({ hours }: { readonly hours: WeeklyHours }) => {
  const t = useText();
  const [monday, setMonday] = useState(() => mondayOf(today(hours.zone)));
  const [settled] = useDebouncedValue(hours, 400);
  const trial = useQuery({
    ...trialQuery({ hours: settled, from: monday, until: addDays(monday, 6) }),
    placeholderData: keepPreviousData,
  });
  return (
    <WeekPanel
      monday={monday}
      zone={settled.zone}
      days={trial}
      bandsOf={bandsOfTrial}
      onWeek={setMonday}
      note={t("week.trial")}
    />
  );
};
