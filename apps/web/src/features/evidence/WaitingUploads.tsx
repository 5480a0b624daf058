import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { isDue } from "../../offline/upload-queue";
import { useAllUploads } from "../../offline/use-uploads";
import { useText } from "../../strings/text";
import { ProgressBar } from "../../ui/ProgressBar";
import styles from "./WaitingUploads.module.css";

type Uploads = ReturnType<typeof useAllUploads>;

/** What of the files on this device is still to go, and how it stands. */
const standingOf = ({ kept = [], sending, line }: Uploads) => {
  const here = kept.filter(({ dropped }) => dropped === undefined);
  const going = here.filter(isDue);
  const bytes = going.reduce((sum, { file }) => sum + file.size, 0) - (sending?.sent ?? 0);
  const rest = line.state === "waiting-for-signal" ? ("offline" as const) : ("resting" as const);
  return {
    here,
    going: going.length,
    notTaken: here.length - going.length,
    left: Math.max(0, bytes),
    word: sending === undefined ? rest : ("going" as const),
    now: going.find(({ id }) => id === sending?.id),
    sent: sending?.sent ?? 0,
  };
};

const Now = ({ now, sent }: Pick<ReturnType<typeof standingOf>, "now" | "sent">) => {
  const t = useText();
  if (now === undefined) return null;
  return (
    <div className={styles.bar}>
      <ProgressBar value={sent} max={now.file.size} label={t("evidence.progress", { name: now.name })} />
    </div>
  );
};

/** Photographs and papers that wait on this device go on from any page: how many, how much is left, and the way to their sheet. */
export const WaitingUploads = () => {
  const t = useText();
  const intl = useIntl();
  const { here, going, notTaken, left, word, now, sent } = standingOf(useAllUploads());
  const [first] = here;
  if (first === undefined) return null;
  const megabytes = intl.formatNumber(left / 1e6, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
  return (
    <aside className={`${styles.waiting} no-print`} aria-label={t("uploads.title")}>
      <Now now={now} sent={sent} />
      <p>
        {going > 0 && <span>{t(`uploads.${word}`, { count: going, left: megabytes })}. </span>}
        {notTaken > 0 && <strong>{t("uploads.not-taken", { count: notTaken })}. </strong>}
        <Link to="/reports/$report" params={{ report: first.report }}>
          {t("uploads.see")}
        </Link>
      </p>
    </aside>
  );
};
