import { Button } from "@mantine/core";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { answerWords } from "../../../entities/sheet/answer-text";
import type { Place } from "../../../entities/sheet/places";
import { capital, type SheetIndex } from "../../../entities/sheet/sheet-index";
import type { Draft } from "../SaveState";
import { checksAt } from "../use-own-checks";
import { Line, type Alike } from "./Line";
import {
  likePlace,
  likeStop,
  openLines,
  workingTogether,
  type Said,
  type WalkStage,
  type WalkStop,
} from "../walk";
import styles from "./Walk.module.css";

interface Props {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly stage: WalkStage;
  readonly stop: WalkStop;
  readonly draft: Pick<Draft, "findings" | "keep" | "settle">;
  readonly checks: readonly CrossCheck[];
  readonly open: string | undefined;
  readonly onOpen: (key: string | undefined) => void;
  readonly onNext: (key: string | undefined, besides?: readonly Place[]) => void;
  readonly onSay: (said: readonly Said[]) => void;
}

const named = (places: readonly Place[]): readonly string[] =>
  places.map(({ item, words }) => (words === "" ? item.words.american : words));

/** One press for several lines: all of these work, the same as across the car. What it says is named beside it. */
const Together = ({ report, index, stage, stop, draft, onNext, onSay }: Props) => {
  const t = useText();
  const intl = useIntl();
  const { findings } = draft;
  const working = workingTogether(stop.lines, findings);
  const like = likeStop(stop.lines, stage.lines, findings);
  if (working.length === 0 && like === undefined) return null;
  const say = (said: readonly Said[]): void => {
    onSay(said);
    onNext(
      undefined,
      said.map(({ place }) => place),
    );
  };
  const words = ({ place: { item }, answer }: Said): string =>
    `${item.words.american}: ${answerWords({ index, item, scales: report.scales }, answer).text}`;
  return (
    <div className={styles.together}>
      {like && (
        <div>
          <Button size="md" variant="light" onClick={() => say(like.said)}>
            {t("walk.like", { place: like.of, count: like.said.length })}
          </Button>
          <p>{like.said.map(words).join("; ")}</p>
        </div>
      )}
      {working.length > 0 && (
        <div>
          <Button
            size="md"
            variant="light"
            onClick={() =>
              say(working.map((place) => ({ place, answer: { kind: "working", value: "yes" } })))
            }
          >
            {t("walk.work", { count: working.length })}
          </Button>
          <p>{intl.formatList(named(working), { type: "unit" })}</p>
        </div>
      )}
    </div>
  );
};

/** Where one stands, and what is looked at from there. */
export const Stop = (props: Props) => {
  const { report, index, stage, stop, draft, checks, open, onOpen, onNext, onSay } = props;
  const { findings, keep, settle } = draft;
  const alikeOf = (place: Place): Alike | undefined => {
    const like = likePlace(place, stage.lines, findings);
    const answer = like && findings.get(like.key)?.finding?.answer;
    if (like === undefined || answer === undefined) return undefined;
    const same = stage.lines.filter(({ item, key }) => item.id === place.item.id && key !== place.key);
    return { place: like, answer, others: openLines(same, findings) };
  };
  const saidOf = ({ item }: Place) =>
    stage.lines
      .filter((line) => line.item.id === item.id)
      .map(({ key }) => findings.get(key)?.finding)
      .filter((finding) => !!finding);
  return (
    <section className={styles.stop} aria-labelledby={`stop-${stop.id}`}>
      <h3 id={`stop-${stop.id}`}>{capital(stop.words)}</h3>
      <Together {...props} />
      <ul className={styles.lines}>
        {stop.lines.map((place) => {
          const isOpen = open === place.key;
          return (
            <Line
              key={place.key}
              report={report}
              index={index}
              place={place}
              kept={findings.get(place.key)}
              checks={isOpen ? checksAt(checks, place.item.id, place.position) : none}
              said={isOpen ? saidOf(place) : none}
              alike={isOpen ? alikeOf(place) : undefined}
              cautions={isOpen ? ownCautions(index, place, stage) : none}
              open={isOpen}
              onOpen={onOpen}
              onNext={onNext}
              onSay={onSay}
              keep={keep}
              settle={settle}
            />
          );
        })}
      </ul>
    </section>
  );
};

const none: readonly never[] = [];

/** What the gate of this stage has not said already. */
const ownCautions = (index: SheetIndex, { item }: Place, { stage }: WalkStage): readonly string[] =>
  item.cautions.filter((id) => index.cautions.get(id)?.stages?.includes(stage) !== true);
