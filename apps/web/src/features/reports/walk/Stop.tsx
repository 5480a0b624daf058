import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import type { Place } from "../../../entities/sheet/places";
import { capital, type SheetIndex } from "../../../entities/sheet/sheet-index";
import type { Draft } from "../../../offline/use-draft";
import { checksAt } from "../use-own-checks";
import { likePlace, openLines, together, type Said, type WalkStage, type WalkStop } from "../walk";
import { Line } from "./Line";
import type { Alike } from "./SayAgain";
import { Together } from "./Together";
import styles from "./Walk.module.css";

interface Props {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly stage: WalkStage;
  readonly stop: WalkStop;
  readonly draft: Pick<Draft, "findings" | "keep" | "settle">;
  readonly checks: readonly CrossCheck[];
  readonly open: string | undefined;
  /** May what is done here be done with this car? Nothing is known to work that may not be tried. */
  readonly mayTry: boolean;
  readonly onOpen: (key: string | undefined) => void;
  readonly onNext: (key: string | undefined, besides?: readonly Place[]) => void;
  readonly onSay: (said: readonly Said[]) => void;
}

const alikeOf = (place: Place, { lines }: WalkStage, findings: Draft["findings"]): Alike | undefined => {
  const like = likePlace(place, lines, findings);
  const answer = like && findings.get(like.key)?.finding?.answer;
  if (like === undefined || answer === undefined) return undefined;
  const same = lines.filter(({ item, key }) => item.id === place.item.id && key !== place.key);
  return { place: like, answer, others: openLines(same, findings) };
};

/** What the gate of this stage has not said already. */
const ownCautions = (index: SheetIndex, { item }: Place, { stage }: WalkStage): readonly string[] =>
  item.cautions.filter((id) => index.cautions.get(id)?.stages?.includes(stage) !== true);

const none: readonly never[] = [];
const closed = { checks: none, said: none, alike: undefined, cautions: none };

/** What an open line shows besides its name. */
const insideOf = (place: Place, { index, stage, draft: { findings }, checks }: Props) => ({
  checks: checksAt(checks, place.item.id, place.position),
  said: stage.lines
    .filter((line) => line.item.id === place.item.id)
    .map(({ key }) => findings.get(key)?.finding)
    .filter((finding) => !!finding),
  alike: alikeOf(place, stage, findings),
  cautions: ownCautions(index, place, stage),
});

const StopLine = ({ place, ...props }: Props & { readonly place: Place }) => {
  const { report, index, draft, onOpen, onNext, onSay } = props;
  const isOpen = props.open === place.key;
  const { findings, keep, settle } = draft;
  return (
    <Line
      {...{ report, index, place, onOpen, onNext, onSay, keep, settle }}
      {...(isOpen ? insideOf(place, props) : closed)}
      kept={findings.get(place.key)}
      open={isOpen}
    />
  );
};

/** Where one stands, and what is looked at from there. */
export const Stop = (props: Props) => {
  const { report, index, stage, stop, draft, mayTry, onNext, onSay } = props;
  const sayAll = (said: readonly Said[]): void => {
    onSay(said);
    onNext(
      undefined,
      said.map(({ place }) => place),
    );
  };
  return (
    <section className={styles.stop} aria-labelledby={`stop-${stop.id}`}>
      <h3 id={`stop-${stop.id}`}>{capital(stop.words)}</h3>
      <Together
        {...together(stop.lines, stage.lines, draft.findings, mayTry)}
        report={report}
        index={index}
        onSay={sayAll}
      />
      <ul className={styles.lines}>
        {stop.lines.map((place) => (
          <StopLine key={place.key} {...props} place={place} />
        ))}
      </ul>
    </section>
  );
};
