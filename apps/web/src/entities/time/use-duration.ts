import { useText } from "../../strings/text";

/** Nothing of a zone: what shows minutes needs no calendar. */
const splitMinutes = (minutes: number): { hours: number; minutes: number } => {
  const whole = Math.round(minutes);
  return { hours: Math.floor(whole / 60), minutes: whole % 60 };
};

/** Minutes in words: `45 min`, `3 h`, `3 h 20 min`. */
export const useDuration = (): ((minutes: number) => string) => {
  const t = useText();
  return (all) => {
    const { hours, minutes } = splitMinutes(all);
    if (hours === 0) return t("time.minutes", { minutes });
    return minutes === 0 ? t("time.hours", { hours }) : t("time.both", { hours, minutes });
  };
};
