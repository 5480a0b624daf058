import type { Release } from "@evenhand/shared/http/releases";
import { useText } from "../../strings/text";
import { Severity } from "../../entities/matter/Severity";
import type { ReleasedGroup } from "./by-matter";
import styles from "./Disputes.module.css";
import { OneRelease } from "./OneRelease";
import { Settle } from "./Settle";
import { isTurnOf } from "./settle-form";
import { Standing } from "./Standing";

interface Props {
  readonly group: ReleasedGroup;
}

/** Lines that wait for the person in one state, where there are several: one answer can do for all. */
const together = (releases: readonly Release[]): Release[] => {
  const groups = Map.groupBy(releases.filter(isTurnOf), ({ state }) => state);
  const [most] = [...groups.values()].toSorted((a, b) => b.length - a.length);
  return most === undefined || most.length < 2 ? [] : most;
};

const Together = ({ releases }: { readonly releases: readonly Release[] }) => {
  const t = useText();
  const [first] = releases;
  if (first === undefined) return null;
  return (
    <section className={styles.together}>
      <h3>{t("settle.all", { count: releases.length })}</h3>
      <Standing release={first} />
      <Settle releases={releases} />
    </section>
  );
};

/** What was laid before the dealer of one matter, called by what was laid and by nothing else. */
export const OneMatter = ({ group: { matter, releases } }: Props) => {
  const t = useText();
  const joint = together(releases);
  return (
    <section className={styles.matter}>
      <div className={styles.matterHead}>
        <h2>{matter?.headline ?? t("released.matter.none")}</h2>
        <p>
          {matter !== null && <Severity severity={matter.severity} unknown={!matter.found} />}
          <span>{t("released.matter", { count: releases.length })}</span>
        </p>
      </div>
      {releases.map((release) => (
        <OneRelease key={release.id} release={release} together={joint.includes(release)} />
      ))}
      <Together releases={joint} />
    </section>
  );
};
