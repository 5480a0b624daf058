import type { GradeScale } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import { outcomeOf } from "../outcome-words/index.ts";
import type { Sensed } from "../sensed-words/index.ts";
import { namesTrouble, sensedIn } from "../sensed-words/index.ts";
import { answered, unanswered } from "./context.ts";
import type { Answered, Asked } from "./context.ts";

const scaleOf = (id: string, name: string, grades: readonly string[]): GradeScale => ({
  id,
  name,
  grades: grades.map((grade) => ({ id: grade, name: grade })),
});

/** What people mean who write a grade and give no scale, worst first. No source: common practice. */
export const WORDS = scaleOf("words", "poor to excellent", ["poor", "fair", "good", "excellent"]);
const LETTERS = scaleOf("letters", "F to A", ["f", "d", "c", "b", "a"]);

/** Grades are kept under ids of letters and digits. */
const idOf = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "");

/**
 * A scale of a sheet's own from the names of its grades, worst first.
 *
 * @example gradeScale("g1", ["Poor", "Fair", "Good"]).grades[1]?.id // "fair"
 */
export const gradeScale = (id: string, names: readonly string[]): GradeScale => ({
  id,
  name: `${names[0] ?? ""} to ${names.at(-1) ?? ""}`,
  grades: names.map((name) => ({ id: idOf(name), name })),
});

const onScale = (text: string, scale: GradeScale | undefined): string | undefined => {
  const id = idOf(text);
  return scale?.grades.find((grade) => grade.id === id)?.id;
};

const on = (scale: GradeScale, value: string, sure = true): Answered => ({
  ok: true,
  answer: { kind: "grade", scale: scale.id, value },
  sure,
  scale,
});

/** `good to fair`, `B+`: the nearest grade there is. */
const loose = (text: string): string =>
  text.replace(/[+-]\s*$/, "").replace(/\s+(condition|shape|order)$/i, "");

/** A panel that was replaced has no finish as new for that. */
const isNew = (senses: readonly Sensed["senses"][number][]): boolean =>
  senses.some((sense) => "general" in sense && sense.general === "new");

/** Words of wear without a scale (`worn`, `like new`) are grades of the house scale, as the lexicon has them. */
const houseGrade = (text: string, { id: item, section, positions }: Item): Answered => {
  const senses = sensedIn(text)
    .filter(({ denied, senses: list }) => !denied && !(section === "body" && isNew(list)))
    .flatMap(({ senses: list }) => list);
  const grade = senses.find((sense) => "grade" in sense);
  if (grade !== undefined) return answered({ kind: "grade", scale: "house", value: grade.grade }, true);
  const general = senses.find((sense) => "general" in sense);
  if (general?.general === "good")
    return answered({ kind: "grade", scale: "house", value: "even-wear" }, false);
  if (general?.general === "new") return answered({ kind: "grade", scale: "house", value: "as-new" }, true);
  if (general?.general === "bad")
    return answered({ kind: "grade", scale: "house", value: "heavy-wear" }, false);
  // A top that is torn, or a headliner that is stained, is worn, how far nobody says.
  const isWhole = positions === undefined && section === "interior";
  if (
    (isWhole || item === "interior.top") &&
    senses.some((sense) => "fault" in sense && sense.fault !== "missing-piece")
  )
    return answered({ kind: "grade", scale: "house", value: "heavy-wear" }, false);
  return unanswered("no-such-word");
};

/** `Retrimmed in vinyl, good`: a grade between commas, where nothing beside it says otherwise. */
const gradedPart = (text: string): string | undefined => {
  const parts = text.split(/\s*[,;]\s+/);
  const graded = parts.filter((part) => onScale(part, WORDS) !== undefined);
  const [only] = graded;
  const others = parts.filter((part) => part !== only).join(", ");
  const saysMore = sensedIn(others).some(({ senses }) =>
    senses.some((sense) => "grade" in sense || "general" in sense || "fault" in sense),
  );
  return parts.length < 2 || graded.length !== 1 || saysMore ? undefined : onScale(only ?? "", WORDS);
};

/** A grade on the sheet's own scale, on the usual words or letters, or by a word of wear. */
export const gradeOf = ({ item, value, scale, note, labels }: Asked): Answered => {
  const text = loose(value.text);
  const own = onScale(value.text, scale) ?? onScale(text, scale);
  if (own !== undefined && scale !== undefined) return on(scale, own);
  const word = onScale(text, WORDS) ?? gradedPart(value.text);
  if (word !== undefined) return on(WORDS, word);
  const letter = onScale(text, LETTERS);
  if (letter !== undefined) return on(LETTERS, letter, /^[A-DF]/.test(value.text.trim()));
  if (value.numeric) return unanswered("no-scale");
  const says = value.outcome?.says;
  const faulty = (says === "yes" || says === "no") && labels.some((label) => namesTrouble(label.text));
  if (faulty)
    return says === "no"
      ? unanswered("no-such-word")
      : answered({ kind: "grade", scale: "house", value: "heavy-wear" }, false);
  // `Yes | Frayed`: beside a mark of another column the words of the condition count.
  const worded = outcomeOf(value.text) === undefined ? houseGrade(value.text, item) : undefined;
  if (worded?.ok === true) return worded;
  if (value.outcome?.says === "good" || value.outcome?.says === "yes")
    return answered({ kind: "grade", scale: "house", value: "even-wear" }, false);
  if (value.outcome?.says === "bad" || value.outcome?.says === "no") {
    const byNote = houseGrade(note, item);
    return byNote.ok ? byNote : answered({ kind: "grade", scale: "house", value: "heavy-wear" }, false);
  }
  return houseGrade(value.text, item);
};
