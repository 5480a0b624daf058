import type { GradeScale } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { WORDS } from "../answer-of/grade.ts";
import { notedNumbers } from "../answer-of/reading.ts";
import { labelOf } from "../label/index.ts";
import { outcomeOf } from "../outcome-words/index.ts";
import { isNumeric } from "../read-value/numbers.ts";
import { sensedIn } from "../sensed-words/index.ts";
import type { Claim } from "../table-claims/index.ts";

const { contexts } = lexiconVersion1;

const namesFault = (text: string): boolean =>
  sensedIn(text).some(({ senses, denied }) => !denied && senses.some((sense) => "fault" in sense));

/** Light and weather are seldom what a row is about. */
const fitOfSection = (item: Item, sections: readonly string[]): number => {
  if (item.circumstance === true) return 0.9;
  if (sections.length === 0) return 1;
  const rank = sections.indexOf(item.section);
  return rank === 0 ? 1.1 : rank > 0 ? 1.03 : 0.92;
};

const OF_PAINT = /\b(?:paint\w*|finish|gloss|lacquer|shine)\b/i;

const praises = (text: string): boolean =>
  sensedIn(text).some(
    ({ senses, denied }) => !denied && senses.some((sense) => "general" in sense && sense.general === "good"),
  ) && !namesFault(text);

/** `Trunk lid paint | B`, `Paintwork | good` grade the paint, and find no dents. */
const fitOfPaint = ({ value, names }: Claim, item: Item, scale: GradeScale | undefined): number => {
  if (value.numeric) return 1;
  const graded = [scale, WORDS].some((one) =>
    one?.grades.some(({ name }) => name.toLowerCase() === value.text.toLowerCase()),
  );
  const isGood = graded || value.outcome?.says === "good" || praises(value.text);
  if (!isGood || !names.some(({ text }) => OF_PAINT.test(text))) return 1;
  return item.id === "body.finish" ? 1.35 : item.id === "body.faults" ? 0.8 : 1;
};

/** A grade ticked is of something that is graded. */
const fitOfGrade = ({ value }: Claim, item: Item, scale: GradeScale | undefined): number => {
  const isGrade = scale?.grades.some(({ name }) => name.toLowerCase() === value.text.toLowerCase()) === true;
  return !isGrade ? 1 : item.answer === "grade" ? 1.12 : 0.95;
};

/** A figure with its unit is of what is measured in it. */
const fitOfFigure = ({ value, note, unit }: Claim, item: Item): number => {
  // `Tyre LF | ok | 6 mm`
  if (value.outcome?.says === "good" && value.numbers === undefined && notedNumbers(note)?.unit !== undefined)
    return item.answer === "reading" && isNumeric(note) ? 1.15 : 1;
  // `750 | rpm | pass`: beside a verdict the figure is what is said.
  const judged = value.numeric && value.outcome !== undefined;
  const measured = value.numbers?.unit ?? (judged ? unit : undefined);
  if (measured === undefined && value.numbers?.of32 !== true) return 1;
  // `Filler, 6 mm thick` is no thickness of the paint.
  if (!value.numeric && namesFault(value.text)) return item.answer === "faults" ? 1.15 : 0.85;
  return item.answer === "reading" ? 1.15 : value.numeric ? 0.85 : 1;
};

/** `Spare wheel | ✓`: a mark alone says of what may be there that it is, before it says anything of its parts. */
const fitOfPresence = ({ value }: Claim, item: Item): number =>
  item.answer === "presence" &&
  item.presence?.goodIs === "present" &&
  (value.outcome?.says === "good" || value.outcome?.says === "yes")
    ? 1.15
    : 1;

/** `Calipers / cylinders`: discs are in front and drums at the rear, where a name is of either. */
const fitOfAxle = ({ where }: Claim, { positions }: Item): number => {
  const other = positions === "disc-corners" ? "rear" : positions === "drum-corners" ? "front" : undefined;
  return other !== undefined && where.some(({ places }) => places.has(other)) ? 0.95 : 1;
};

/** Yes and no are of what works or is there sooner than of a grade, and a word of a checklist sooner than of a figure. */
const fitOfAnswer = ({ value }: Claim, item: Item): number =>
  item.answer === "reading" && value.outcome?.says === "unseen" && value.outcome.reason === "not-tested"
    ? 0.97
    : item.answer === "grade" && (value.outcome?.says === "yes" || value.outcome?.says === "no")
      ? 0.8
      : 1;

/** What the note speaks of: `Seat belts | bad | webbing frayed` is of the webbing. */
const fitOfNote = ({ note, names }: Claim, item: Item): number => {
  if (note === "") return 1;
  const named = new Set(names.flatMap(({ core }) => core));
  const noted = new Set(labelOf(note).core);
  return labelOf(item.words.american).core.some((stem) => noted.has(stem) && !named.has(stem)) ? 1.08 : 1;
};

/** `Smoke | blue on the overrun`: of items that only time or place tell apart, the one whose words stand in the value. */
const fitOfTime = ({ value, note }: Claim, item: Item): number => {
  const words = contexts[item.id];
  if (words === undefined || value.numeric || !/^(?:engine\.smoke|road\.(?:cold|hot))/u.test(item.id))
    return 1;
  const said = ` ${`${value.text} ${note}`.toLowerCase().replaceAll(/[^a-z0-9]+/gu, " ")} `;
  return words.some((word) => said.includes(` ${word} `)) ? 1.15 : 1;
};

/** A fault that is named is a fault of the part before it is a grade of it. */
const fitOfFault = ({ value, note }: Claim, item: Item): number => {
  if (item.answer !== "grade" || value.numeric) return 1;
  const isMarked = value.text === "" || outcomeOf(value.text) !== undefined;
  const said = isMarked ? (value.outcome?.says === "bad" ? note : "") : value.text;
  return namesFault(said) ? 0.9 : 1;
};

/** How much likelier or less likely the claim's value, remark and headings make an item, beside how well its name fits. */
export const fitOfRest = (
  claim: Claim,
  item: Item,
  { scale, sections }: { readonly scale: GradeScale | undefined; readonly sections: readonly string[] },
): number =>
  fitOfSection(item, sections) *
  fitOfGrade(claim, item, scale) *
  fitOfPaint(claim, item, scale) *
  fitOfFault(claim, item) *
  fitOfAnswer(claim, item) *
  fitOfPresence(claim, item) *
  fitOfAxle(claim, item) *
  fitOfNote(claim, item) *
  fitOfTime(claim, item) *
  fitOfFigure(claim, item);
