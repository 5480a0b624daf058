import { isBadCall } from "@evenhand/shared/severity";
import { callOf } from "@evenhand/sheet/call";
import type { Judgment } from "../judgment/index.ts";
import { standingOf } from "../standing/index.ts";
import { visitTimes } from "../visit-times/index.ts";
import type { VisitTimes } from "../visit-times/index.ts";
import type { AnsweredPair } from "./index.ts";
import { gravest, optionsOf, pickOf } from "./picks.ts";

/** When each of the two looked. */
export const timesOf = ({ a, b, sides }: AnsweredPair): VisitTimes =>
  visitTimes(a, sides.a.report, b, sides.b.report);

/** Whether two answers part, surely or perhaps. */
const isParted = ({ outcome }: Judgment): boolean => outcome === "differ" || outcome === "doubtful";

const isFoundBad = ({ b, place, contexts }: AnsweredPair): boolean =>
  isBadCall(callOf(b.answer, place.compiled.item, contexts.b));

/**
 * Options that move from day to day: those the item names, or all of one that drifts. Where something bad was said, it must be what
 * moves: used oil may be clean tomorrow, but nothing makes it milky overnight, and what starts at once does not fail to start by the day.
 */
const isDrifting = (asked: AnsweredPair): boolean => {
  const { item } = asked.place.compiled;
  const drifting = item.choice?.drifting;
  if (drifting === undefined) return item.time === "drifts";
  const said = [asked.a.answer, asked.b.answer].flatMap((answer) =>
    answer.kind === "choice" ? optionsOf(answer) : [],
  );
  const bad = said.filter((option) => isBadCall(pickOf(asked, option).call));
  return bad.length > 0 ? drifting.includes(gravest(bad, asked)) : said.some((one) => drifting.includes(one));
};

/**
 * What moves from day to day is in doubt where what was found is bad, and contradicts nothing where it is not. Readings see to it
 * themselves, for a day's allowance decides there.
 */
const softenDrift = (judgment: Judgment, asked: AnsweredPair): Judgment => {
  const { item } = asked.place.compiled;
  if (!isParted(judgment) || item.answer === "reading" || !isDrifting(asked)) return judgment;
  if (!timesOf(asked).differentDays) return judgment;
  const bad = isFoundBad(asked);
  const outcome = bad ? "doubtful" : "consistent";
  return {
    ...judgment,
    outcome,
    reason: bad ? "changed-bad-between-days" : "changed-between-days",
    standing: standingOf(outcome),
  };
};

const VISIT = "visit";

/**
 * How a visit was (warmed beforehand, on a charger, washed) each side tells of its own: what was bad at the inspector's is bad, and what
 * was said of another day is neither borne out nor refuted by it.
 */
const sayOwnVisit = (judgment: Judgment, asked: AnsweredPair): Judgment => {
  if (!isParted(judgment) || asked.place.compiled.item.section !== VISIT) return judgment;
  const outcome = isFoundBad(asked) ? "incomparable" : "consistent";
  return { ...judgment, outcome, reason: "own-visit", direction: "neither", standing: standingOf(outcome) };
};

/**
 * What the time between two visits makes of what they part in: how a visit was is each side's own, and what moves from day to day may
 * have moved.
 *
 * @example betweenVisits(differing, warmedBeforehand).reason // "own-visit"
 */
export const betweenVisits = (judgment: Judgment, asked: AnsweredPair): Judgment =>
  softenDrift(sayOwnVisit(judgment, asked), asked);
