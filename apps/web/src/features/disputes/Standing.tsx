import { owedIn } from "@evenhand/case/owed-in";
import { lapseOf } from "@evenhand/case/settlement";
import type { Release } from "@evenhand/shared/http/releases";
import { useDueTime } from "../../entities/release/use-owed-words";
import { oneOf } from "../../service/one-of";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import styles from "./Disputes.module.css";

const silences = ["finding-stands", "left-open", "settled"] as const;

interface Props {
  readonly release: Pick<Release, "state" | "as" | "deadline" | "zone" | "vehicle">;
}

/** What comes next beside an answer: a report to revise, a look to book. */
const Next = ({ release: { state, as, vehicle } }: Props) => {
  const t = useText();
  if (state === "revising" && as === "inspector") return <p>{t("settle.next.revising")}</p>;
  if (state !== "looking-again") return null;
  if (as !== "buyer") return <p>{t("settle.next.looking-again.theirs")}</p>;
  return (
    <>
      <p>{t("settle.next.looking-again.yours")}</p>
      <p>
        <LinkButton to="/cars/$vehicle/hours" params={{ vehicle }} variant="filled">
          {t("settle.next.book")}
        </LinkButton>
      </p>
    </>
  );
};

/** Whose turn it is, until when, and what silence comes to. */
export const Standing = ({ release }: Props) => {
  const t = useText();
  const dueTime = useDueTime();
  const { state, as, deadline, zone } = release;
  const owed = owedIn(state);
  if (owed === null) return null;
  const silence = oneOf(silences, lapseOf(state) ?? "");
  const whose = owed.of === as ? "yours" : "theirs";
  return (
    <div className={styles.grounds}>
      {deadline === null ? (
        <p>{t("settle.due.none", { whose, of: owed.of })}</p>
      ) : (
        <p>
          {t("settle.due", { whose, of: owed.of, when: dueTime(deadline, zone) })}{" "}
          {silence !== undefined && t(`settle.lapse.${silence}`)}
        </p>
      )}
      <Next release={release} />
    </div>
  );
};
