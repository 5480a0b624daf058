import { Button } from "@mantine/core";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { Notice } from "../../../ui/Notice";
import type { Place } from "../../../entities/sheet/places";
import type { Said } from "../walk";
import { OwnDoubt } from "./OwnDoubt";
import type { RoadGate } from "./use-road-gate";
import styles from "./Walk.module.css";

interface Props {
  readonly gate: RoadGate;
  /** Lines of the road nothing was said of. */
  readonly open: readonly Place[];
  readonly onSay: (said: readonly Said[]) => void;
}

/** What was found keeps the car off the road; one press says so of every line of the road. */
const Closed = ({ gate: { closedBy }, open, onSay }: Props) => {
  const t = useText();
  const intl = useIntl();
  const unsafe = { kind: "not-seen", reason: "unsafe" } as const;
  return (
    <Notice kind="caution" title={t("walk.road.closed")}>
      <p>{t("walk.road.closed.by", { found: intl.formatList(closedBy, { type: "conjunction" }) })}</p>
      {open.length > 0 && (
        <Button
          size="md"
          className={styles.following}
          onClick={() => onSay(open.map((place) => ({ place, answer: unsafe })))}
        >
          {t("walk.road.unsafe", { count: open.length })}
        </Button>
      )}
    </Notice>
  );
};

const Doubted = ({ doubts }: Pick<RoadGate, "doubts">) => {
  const t = useText();
  return (
    <Notice kind="caution" title={t("walk.road.doubted")}>
      {doubts.filter(Boolean).map((words) => (
        <p key={words}>{words}</p>
      ))}
      <p>{t("walk.road.doubted.what")}</p>
    </Notice>
  );
};

/** What keeps the car off the road, found or doubted; else the inspector's own doubt can be said. */
export const RoadClosed = (props: Props) => {
  const { gate, open, onSay } = props;
  if (gate.closedBy.length > 0) return <Closed {...props} />;
  return gate.doubts.length > 0 ? <Doubted doubts={gate.doubts} /> : <OwnDoubt open={open} onSay={onSay} />;
};
