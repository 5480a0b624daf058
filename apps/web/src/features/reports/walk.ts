import type { Answer } from "@evenhand/shared/answer";
import type { BriefItem } from "@evenhand/shared/booking";
import type { VehicleForm } from "@evenhand/shared/report";
import type { Depth, Stage } from "@evenhand/shared/sheet";
import { ofBrief, ofDepth, visitOf, type Scope, type StageOfVisit } from "@evenhand/sheet/visit-of";
import type { KeptFinding } from "../../offline/store";
import { placeKey, type Place } from "../../entities/sheet/places";
import { positionWords, type SheetIndex } from "../../entities/sheet/sheet-index";

/** Where one stands, and the lines looked at from there. */
export interface WalkStop {
  readonly id: string;
  readonly words: string;
  readonly lines: readonly Place[];
}

export interface WalkStage extends Pick<StageOfVisit, "stage" | "cautions" | "raising"> {
  readonly stops: readonly WalkStop[];
  readonly lines: readonly Place[];
  /** Minutes of one person alone for each item, all its lines here together. */
  readonly minutes: ReadonlyMap<string, number>;
}

export type Findings = ReadonlyMap<string, Pick<KeptFinding, "finding" | "unread">>;

/** What is walked through: what the brief of the visit asks, or a depth of the sheet. */
export type Extent = "brief" | Depth;

export const scopeOf = (extent: Extent, brief: readonly BriefItem[] | null | undefined): Scope =>
  extent === "brief" ? ofBrief(brief ?? []) : ofDepth(extent);

/** The visit to this car, stage by stage and stop by stop. */
export const walkOf = (index: SheetIndex, form: VehicleForm, scope: Scope): readonly WalkStage[] =>
  visitOf(index.sheet, form, scope).map(({ stage, cautions, raising, items, stops }) => {
    const walked = stops.map(({ place, lines }) => ({
      id: place.id,
      words: place.words.american,
      lines: lines.map(({ item, position }) => ({
        key: placeKey(item.id, position),
        item,
        position,
        words: positionWords(index, item, position),
      })),
    }));
    return {
      stage,
      cautions,
      raising,
      stops: walked,
      lines: walked.flatMap(({ lines }) => lines),
      minutes: new Map(items.map((item) => [item.id, scope(item)?.minutes ?? 0])),
    };
  });

export const isAnswered = (findings: Findings, key: string): boolean =>
  (findings.get(key)?.finding ?? null) !== null;

export const isOpen = (findings: Findings, key: string): boolean =>
  !isAnswered(findings, key) && findings.get(key)?.unread === undefined;

/** Lines nothing stands at yet, nor anything that cannot be read. */
export const openLines = (lines: readonly Place[], findings: Findings): readonly Place[] =>
  lines.filter(({ key }) => isOpen(findings, key));

export interface Progress {
  readonly done: number;
  readonly all: number;
  /** What is left by the minutes of the sheet: an item's minutes by the share of its lines still open. */
  readonly minutesLeft: number;
}

/** Raising the car counts until something was looked at under it; a stage that is done leaves no minutes. */
export const progressOf = ({ lines, minutes, raising }: WalkStage, findings: Findings): Progress => {
  const open = lines.filter(({ key }) => !isAnswered(findings, key));
  const share = new Map<string, { open: number; all: number }>();
  for (const { key, item } of lines) {
    const one = share.get(item.id) ?? { open: 0, all: 0 };
    share.set(item.id, { open: one.open + (isAnswered(findings, key) ? 0 : 1), all: one.all + 1 });
  }
  const left = [...share].reduce(
    (sum, [item, one]) => sum + ((minutes.get(item) ?? 0) * one.open) / one.all,
    0,
  );
  const raised = open.length < lines.length ? 0 : raising;
  return { done: lines.length - open.length, all: lines.length, minutesLeft: left + raised };
};

export const wholeProgress = (parts: readonly Progress[]): Progress =>
  parts.reduce(
    (sum, one) => ({
      done: sum.done + one.done,
      all: sum.all + one.all,
      minutesLeft: sum.minutesLeft + one.minutesLeft,
    }),
    { done: 0, all: 0, minutesLeft: 0 },
  );

/**
 * Answers one press may say again of another place: what was looked at, never what was measured (a reading is taken where it
 * stands), nor a fault found, which is where it is.
 */
export const mayBeSaidAgain = (answer: Answer): boolean =>
  answer.kind === "faults" ? answer.found.length === 0 : answer.kind !== "reading" && answer.kind !== "color";

const mirrored = (position: string): string =>
  position.replace(/left|right/g, (side) => (side === "left" ? "right" : "left"));

/** Of the places of one item, in the order one walks: the one across the car if it has an answer, else the last before this one. */
export const likePlace = (place: Place, lines: readonly Place[], findings: Findings): Place | undefined => {
  const said = lines.filter(({ item, key }) => {
    const answer =
      item.id === place.item.id && key !== place.key ? findings.get(key)?.finding?.answer : undefined;
    return answer !== undefined && mayBeSaidAgain(answer);
  });
  const across = mirrored(place.position);
  const before = new Set(
    lines
      .slice(
        0,
        lines.findIndex(({ key }) => key === place.key),
      )
      .map(({ key }) => key),
  );
  return (
    said.find(({ position }) => position === across && position !== place.position) ??
    said.findLast(({ key }) => before.has(key)) ??
    said[0]
  );
};

/** An answer, and the place it is said of. */
export interface Said {
  readonly place: Place;
  readonly answer: Answer;
  /** In the inspector's words, of each. */
  readonly note?: string;
}

/** What was said across the car, or at the place before, of everything open here: from one place, where that is more than one line. */
export const likeStop = (
  here: readonly Place[],
  lines: readonly Place[],
  findings: Findings,
): { readonly of: string; readonly said: readonly Said[] } | undefined => {
  const pairs = openLines(here, findings).flatMap((place) => {
    const like = likePlace(place, lines, findings);
    const answer = like && findings.get(like.key)?.finding?.answer;
    return like === undefined || answer === undefined || here.includes(like)
      ? []
      : [{ place, answer, of: like.words }];
  });
  const of = pairs[0]?.of ?? "";
  const said = pairs.filter((pair) => pair.of === of);
  return of === "" || said.length < 2 ? undefined : { of, said };
};

/** Everything open here that either works or does not, where it is more than one. */
export const workingTogether = (lines: readonly Place[], findings: Findings): readonly Place[] => {
  const open = openLines(lines, findings).filter(({ item }) => item.answer === "working");
  return open.length > 1 ? open : [];
};

/** What one press says of several lines. */
export interface Together {
  readonly like: ReturnType<typeof likeStop>;
  readonly working: readonly Place[];
}

/**
 * What may be said of several lines here with one press.
 *
 * @param mayTry false where what is done here may not be done with this car, or where that is not known yet: then nothing is known
 *   to work
 */
export const together = (
  here: readonly Place[],
  lines: readonly Place[],
  findings: Findings,
  mayTry: boolean,
): Together =>
  mayTry
    ? { like: likeStop(here, lines, findings), working: workingTogether(here, findings) }
    : { like: undefined, working: [] };

/** The next line to answer after this one, in the order one walks; round to the first open one at the end. */
export const nextOpen = (
  lines: readonly Place[],
  findings: Findings,
  key: string | undefined,
): Place | undefined => {
  const at = lines.findIndex((line) => line.key === key);
  const open = [...lines.slice(at + 1), ...lines.slice(0, Math.max(at, 0))];
  return openLines(open, findings)[0];
};

export const stageAt = (walk: readonly WalkStage[], stage: Stage | undefined): WalkStage | undefined =>
  walk.find((one) => one.stage === stage) ?? walk[0];
