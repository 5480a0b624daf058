import { Button } from "@mantine/core";
import type { LookFirst } from "@evenhand/shared/http/money";
import { useQuery } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { lookFirstQuery } from "../../entities/appointment/queries";
import { capital, type SheetIndex, itemWords } from "../../entities/sheet/sheet-index";
import { useDuration } from "../../entities/time/use-duration";
import { useText } from "../../strings/text";
import { Panel, Tag } from "../../ui/Page";
import styles from "./LookFirstPanel.module.css";
import { stakesOf } from "./look-first-stakes";

type Look = LookFirst["looks"][number];

/** How grave it can be and how little is known of it; or that it was agreed. */
const useReason = (): ((look: Look) => string) => {
  const t = useText();
  return ({ severity, known, again }) =>
    t("brief.first.reason", {
      stake: t(`brief.first.stake.${severity}`),
      known: again ? t("brief.first.again") : t(`brief.first.known.${known}`),
    });
};

interface LineProps {
  readonly look: Look;
  readonly words: string;
  readonly isIn: boolean;
}

const Line = ({ look, words, isIn }: LineProps) => {
  const t = useText();
  const reason = useReason();
  return (
    <li className={styles.line} data-in={isIn}>
      <span>
        <strong>{words}</strong>
        <span className={styles.reason}>{reason(look)}</span>
      </span>
      <span className={styles.takes}>
        <span className="figures">{t("brief.item", { minutes: look.minutes })}</span>
        <Tag>{t(isIn ? "brief.first.in" : "brief.first.out")}</Tag>
      </span>
    </li>
  );
};

/** Why these, in one paragraph. */
const Why = ({ from, looks, priced }: LookFirst) => {
  const t = useText();
  const intl = useIntl();
  const { again, silent, ...stakes } = stakesOf(looks);
  const parts = (["halt", "danger", "worth", "rest"] as const)
    .filter((of) => stakes[of] > 0)
    .map((of) => t(`brief.first.of.${of}`, { count: stakes[of] }));
  return (
    <p className={styles.why}>
      {t(from === "comparison" ? "brief.first.why.comparison" : "brief.first.why.statement", {
        count: looks.length,
        parts: intl.formatList(parts, { type: "conjunction" }),
        silent,
        again,
        priced: stakes.worth > 0 ? "yes" : priced || stakes.rest === 0 ? "none" : "no",
      })}
    </p>
  );
};

interface Props {
  readonly vehicle: string;
  readonly index: SheetIndex;
  /** Items that the visit takes in as it is chosen at this moment, and all it could take. */
  readonly included: ReadonlySet<string>;
  readonly possible: ReadonlySet<string>;
  readonly onAdd: (items: readonly string[]) => void;
}

/** One press takes in what the visit leaves out; without any it says that all are in it. */
const AddOut = ({ out, onAdd }: { readonly out: readonly Look[] } & Pick<Props, "onAdd">) => {
  const t = useText();
  const duration = useDuration();
  if (out.length === 0) return <output>{t("brief.first.all-in")}</output>;
  const time = duration(out.reduce((sum, { minutes }) => sum + minutes, 0));
  return (
    <div>
      <Button variant="default" onClick={() => onAdd(out.map(({ item }) => item))}>
        {t("brief.first.add", { count: out.length, time })}
      </Button>
    </div>
  );
};

/** What to look at first, as a proposal, with one press for what the visit leaves out. */
export const LookFirstPanel = ({ vehicle, index, included, possible, onAdd }: Props) => {
  const t = useText();
  const proposed = useQuery(lookFirstQuery(vehicle)).data;
  const looks = proposed?.looks.filter(({ item }) => possible.has(item)) ?? [];
  if (proposed === undefined || looks.length === 0) return null;
  return (
    <Panel title={t("brief.first.title")} hint={t("brief.first.hint")}>
      <Why {...proposed} looks={looks} />
      <ol className={styles.list}>
        {looks.map((look) => {
          const words = capital(itemWords(index, look.item));
          return <Line key={look.item} look={look} words={words} isIn={included.has(look.item)} />;
        })}
      </ol>
      <AddOut out={looks.filter(({ item }) => !included.has(item))} onAdd={onAdd} />
    </Panel>
  );
};
