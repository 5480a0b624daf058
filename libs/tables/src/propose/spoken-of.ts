import type { GradeScale } from "@evenhand/shared/report";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { WORDS } from "../answer-of/grade.ts";
import type { Candidate } from "../item-names/index.ts";
import type { Claim } from "../table-claims/index.ts";
import type { Reading } from "./reading.ts";

const { marks } = lexiconVersion1;

/** Whether a text is a grade of a scale, by its name. */
export const isOnScale = (text: string, scale: GradeScale | undefined): boolean =>
  scale?.grades.some(({ name }) => name.toLowerCase() === text.trim().toLowerCase()) === true;

const isGraded = ({ value, scale, rated }: Claim): boolean =>
  rated === true || isOnScale(value.text, scale) || isOnScale(value.text, WORDS);

/** Whether what is written speaks of an item that a bare name does not mean. */
const isSpokenOf = ({ item }: Candidate, claim: Claim): boolean => {
  const needed = marks.needs[item.id] ?? (isGraded(claim) ? undefined : marks.needsInWords[item.id]);
  const { names, value, note } = claim;
  // What a remark says of it is no part of what a good word says.
  const noted = value.outcome?.says === "good" || isOnScale(value.text, WORDS) ? "" : note;
  return (
    needed === undefined ||
    needed.test(`${names.map(({ text }) => text).join(" ")} ${value.text} ${value.remark ?? ""} ${noted}`)
  );
};

/** `Engine | good` says nothing of its noise. */
const isTooWide = ({ item }: Candidate, claim: Claim): boolean => {
  const name = claim.names[0]?.text.trim() ?? "";
  return (
    (claim.value.outcome !== undefined || isGraded(claim)) && marks.tooWide[item.id]?.test(name) === true
  );
};

/** `Hood` is the lid over the engine, and the cloth of the soft top where a sheet says bonnet as well. */
const ofHood = (candidate: Candidate, { names }: Claim, { saysBonnet }: Reading): readonly Candidate[] => {
  const [name] = names;
  if (name === undefined || !/^\W*hood\W*$/i.test(name.text)) return [candidate];
  if (saysBonnet !== true) return candidate.at?.includes("hood") === true ? [candidate] : [];
  return candidate.item.id === "interior.top" ? [{ ...candidate, at: ["fabric"] }] : [];
};

/** Candidates that a claim speaks of: none that its bare name does not mean, and of a hood the one its sheet means. */
export const spokenOf = (
  candidates: readonly Candidate[],
  claim: Claim,
  reading: Reading,
): readonly Candidate[] =>
  candidates
    .filter((candidate) => isSpokenOf(candidate, claim) && !isTooWide(candidate, claim))
    .flatMap((candidate) => ofHood(candidate, claim, reading));
