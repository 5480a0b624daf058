import { Button } from "@mantine/core";
import type { Report } from "@evenhand/shared/report";
import { useQuery } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { Notice } from "../../../ui/Notice";
import type { Place } from "../../../entities/sheet/places";
import { positionWords, type SheetIndex } from "../../../entities/sheet/sheet-index";
import type { Draft } from "../SaveState";
import styles from "./Walk.module.css";
import { openLines, type Said } from "../walk";

interface Props {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly lines: readonly Place[];
  readonly findings: Draft["findings"];
  readonly onSay: (said: readonly Said[]) => void;
}

const gateQuery = {
  queryKey: ["road-gate"],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async () => {
    const [{ roadGate }, { compileSheet }] = await Promise.all([
      import("@evenhand/handbook/road-gate"),
      import("@evenhand/sheet/compile-sheet"),
    ]);
    return { roadGate, compileSheet };
  },
} as const;

/** What was found that keeps the car off the road, and the one press that says so of every line of the road. */
export const RoadClosed = ({ report, index, lines, findings, onSay }: Props) => {
  const t = useText();
  const intl = useIntl();
  const gate = useQuery(gateQuery).data;
  if (gate === undefined) return null;
  const own = [...findings.values()].map(({ finding }) => finding).filter((finding) => finding !== null);
  const blocks = gate.roadGate({ ...report, findings: own }, gate.compileSheet(index.sheet));
  if (blocks.length === 0) return null;
  const open = openLines(lines, findings);
  const names = blocks.map(({ item, position }) => {
    const found = index.items.get(item);
    const place = positionWords(index, found, position);
    return [found?.words.american ?? item, place].filter((part) => part !== "").join(", ");
  });
  return (
    <Notice kind="caution" title={t("walk.road.closed")}>
      <p>
        {t("walk.road.closed.by", { found: intl.formatList([...new Set(names)], { type: "conjunction" }) })}
      </p>
      {open.length > 0 && (
        <Button
          size="md"
          className={styles.following}
          onClick={() =>
            onSay(open.map((place) => ({ place, answer: { kind: "not-seen", reason: "unsafe" } })))
          }
        >
          {t("walk.road.unsafe", { count: open.length })}
        </Button>
      )}
    </Notice>
  );
};
