import type { Notice } from "@evenhand/shared/http/notices";
import { useCarName } from "../../entities/car/CarName";
import { useTimes } from "../../entities/time/use-times";
import { minuteOfDay, ownZone } from "../../entities/time/zone-time";
import { useText } from "../../strings/text";

const MINUTE = 60_000;

/** Midnight is said as the last minute of the day that ends: 12:00 AM of which day, nobody is sure. */
const lastMinute = (due: string, zone: string): string =>
  minuteOfDay(due, zone) === 0 ? new Date(Date.parse(due) - MINUTE).toISOString() : due;

/** What a notice says in one sentence: the car by name as long as the reader may see it, a deadline on the reader's own clock. */
export const useSentence = (): ((notice: Notice) => string) => {
  const t = useText();
  const name = useCarName();
  const times = useTimes();
  return ({ kind, car: seen, due, step }) => {
    const car = seen === null ? t("notices.some-car") : t("notices.the-car", { car: name(seen) });
    if (kind !== "deadline-near") return t(`notices.${kind}`, { car });
    const zone = ownZone();
    const when = due === null ? "" : times.brief(lastMinute(due, zone), zone);
    return t(`notices.due.${step ?? "something"}`, { car, due: when });
  };
};
