import { useText } from "../../strings/text";
import { Severity } from "../../entities/matter/Severity";
import type { ReleasedGroup } from "./by-matter";
import styles from "./Disputes.module.css";
import { OneRelease } from "./OneRelease";

interface Props {
  readonly group: ReleasedGroup;
  readonly mayAnswer: boolean;
}

/** What was laid before the dealer of one matter, called by what was laid and by nothing else. */
export const OneMatter = ({ group: { matter, releases }, mayAnswer }: Props) => {
  const t = useText();
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
        <OneRelease key={release.id} release={release} mayAnswer={mayAnswer} />
      ))}
    </section>
  );
};
