import { useEffect, useState } from "react";
import { useText } from "../../strings/text";

const SECOND = 1000;
const MINUTE = 60 * SECOND;

/** Whole minutes that are left; quiet to screen readers but for the last. */
export const TimeLeft = ({ until }: { readonly until: string }) => {
  const t = useText();
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 5 * SECOND);
    return () => clearInterval(timer);
  }, []);
  const left = Math.max(0, Math.floor((Date.parse(until) - now) / MINUTE));
  return <span className="figures">{t("appointment.left", { minutes: left })}</span>;
};
