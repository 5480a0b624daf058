import type { Capture, PictureQuestionKind } from "@evenhand/shared/evidence";
import { camerasInstants } from "./cameras-instants.ts";
import { questionWords } from "./words.ts";

/** Hours by which a camera's clock may be off before anything is made of it. Common practice, no source. */
const CLOCK_HOURS = 12;
/** Meters from the site from which on a picture was taken elsewhere; a telephone without reception is off by hundreds. */
export const ELSEWHERE_METERS = 2_000;
/** Seconds a camera may take to write its file. Common practice, no source. */
const WRITING_SECONDS = 120;

/** What is known of a photograph and where it stands. */
export type PictureFacts = {
  /** Is it the asker's own? The owner is told times and distances; others the fact alone. */
  readonly isOwn: boolean;
  readonly capture: Capture | null;
  /** When the visit began it was taken on; none where there was no visit. */
  readonly visitBegan: Date | null;
  /** From where the car stood to where the camera says it was. */
  readonly metersOff: number | null;
  /** The same picture among the other side's of this car; its id, where the asker may see it. */
  readonly bothSides: string | null;
  /** The same picture with another car; `beside` its id, where it is the asker's own. */
  readonly otherCar: { readonly beside: string | null } | null;
};

export type AskedOfPicture = {
  readonly kind: PictureQuestionKind;
  readonly words: string;
  readonly beside: string | null;
};

const hour = 3_600_000;

/** Hours before the visit by the camera's clock, read as late as it can be meant; none where it may be of the visit. */
function hoursBefore({ capture, visitBegan }: PictureFacts): number | null {
  const taken = capture === null ? null : camerasInstants(capture);
  if (taken === null || visitBegan === null) return null;
  const before = (visitBegan.getTime() - taken.latest) / hour;
  return before > CLOCK_HOURS ? before : null;
}

function secondsAfter({ capture }: PictureFacts): number | null {
  if (capture === null || capture.taken === null || capture.changed === null) return null;
  const after = (Date.parse(`${capture.changed}Z`) - Date.parse(`${capture.taken}Z`)) / 1000;
  return after > WRITING_SECONDS ? after : null;
}

/**
 * What a photograph leads to ask, each with what speaks for it. None of it says that anything is wrong: clocks are off, pictures are filed
 * with the wrong car, and who sends a picture made smaller has edited it.
 *
 * @example pictureQuestions({ isOwn: false, capture: null, visitBegan: null, metersOff: 2_400, bothSides: null, otherCar: null })[0]?.kind // "taken-elsewhere"
 */
export function pictureQuestions(facts: PictureFacts): AskedOfPicture[] {
  const { isOwn, bothSides, otherCar, metersOff } = facts;
  const asked: AskedOfPicture[] = [];
  const ask = (kind: PictureQuestionKind, figure: number | null, beside: string | null = null): void => {
    asked.push({ kind, words: questionWords(kind, isOwn ? figure : null), beside });
  };
  if (bothSides !== null) ask("supplied-by-both", 0, bothSides);
  if (otherCar !== null) ask("seen-on-another-car", 0, otherCar.beside);
  const [before, after] = [hoursBefore(facts), secondsAfter(facts)];
  if (before !== null) ask("older-than-visit", before);
  if (metersOff !== null && metersOff > ELSEWHERE_METERS) ask("taken-elsewhere", metersOff / 1000);
  if (after !== null) ask("edited", after / 3600);
  return asked;
}
