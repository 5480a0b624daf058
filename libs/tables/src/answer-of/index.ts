import type { Answer } from "@evenhand/shared/answer";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { outcomeOf } from "../outcome-words/index.ts";
import { sensedIn } from "../sensed-words/index.ts";
import { choiceOf, ownOption } from "./choice.ts";
import { answered, unanswered } from "./context.ts";
import type { Answered, Asked } from "./context.ts";
import { faultsOf } from "./faults.ts";
import { gradeOf } from "./grade.ts";
import { asksForFault } from "./questions.ts";
import { readingOf } from "./reading.ts";

type Working = Extract<Answer, { kind: "working" }>["value"];
type Presence = Extract<Answer, { kind: "presence" }>["value"];

const working = (value: Working, sure = true): Answered => answered({ kind: "working", value }, sure);
const presence = (value: Presence, sure = true): Answered => answered({ kind: "presence", value }, sure);

/** "not working" says what "working" says, turned over. */
const turned = (value: Working, denied: boolean): Working =>
  !denied || value === "intermittent" ? value : value === "yes" ? "no" : "yes";

/** Faults that stop nothing from working. */
const ONLY_SEEN = /^(?:tear|scratch|stain|dent|ding|chip|fading|corrosion|pitting|burn)$/u;

const workingBySense = (text: string): Answered => {
  const sensed = sensedIn(text);
  const said = sensed.flatMap(({ senses, denied }) =>
    senses.flatMap((sense) => ("working" in sense ? [turned(sense.working, denied)] : [])),
  );
  // `Work but slow`
  const [first] = said;
  if (first !== undefined)
    return working(first === "yes" && said.includes("intermittent") ? "intermittent" : first);
  for (const { senses, denied } of sensed)
    for (const sense of senses) {
      if ("general" in sense && ["good", "new"].includes(sense.general))
        return working(denied ? "no" : "yes");
      if ("general" in sense && sense.general === "bad") return working("no", false);
      if ("grade" in sense && /^(?:heavy-wear|spent)$/u.test(sense.grade)) return working("no", false);
      if ("grade" in sense || ("fault" in sense && !denied && !ONLY_SEEN.test(sense.fault)))
        return working("fault" in sense ? "no" : "yes", false);
    }
  return unanswered("no-such-word");
};

/** What asks for attention may work all the same: of a starter that is noisy a person says whether it turns. */
const isMild = (text: string): boolean =>
  /^\W*(?:(?:needs?|requires?|future|some) )?(?:attention(?: needed| required)?|advis\w*|amber|yellow|marginal|concern|monitor|watch|see (?:notes?|remarks?|comments?))\W*$/i.test(
    text,
  );

const workingOf = (asked: Asked): Answered => {
  const { value, note } = asked;
  const says = value.outcome?.says;
  if ((says === "yes" || says === "no") && asksForFault(asked.labels))
    return working(says === "yes" ? "no" : "yes", false);
  if (says === "good" || says === "yes") {
    const noted = workingBySense(`${outcomeOf(value.text) === undefined ? value.text : ""} ${note}`);
    return noted.ok && noted.answer.kind === "working" && noted.answer.value === "intermittent"
      ? working("intermittent", false)
      : working("yes");
  }
  if (says === "partly") return working("intermittent");
  if (says === "bad" || says === "no") {
    const noted = workingByNote(asked);
    if (says === "bad" && note !== "" && !(noted.ok && noted.sure) && isMild(value.text))
      return unanswered("bad-but-not-how");
    return noted.ok && noted.answer.kind === "working" && noted.answer.value === "intermittent"
      ? working("intermittent")
      : working("no", noted.ok ? noted.sure : note === "");
  }
  const own = ownOption(asked);
  if (own === "yes" || own === "no" || own === "intermittent") return working(own);
  const said = workingBySense(value.text);
  // `Works | slow on low` works at times, whatever word says that it works.
  const noted = saysWorks(said) ? workingBySense(note) : said;
  return noted.ok && noted.answer.kind === "working" && noted.answer.value === "intermittent"
    ? working("intermittent", false)
    : said;
};

const saysWorks = (said: Answered): boolean =>
  said.ok && said.answer.kind === "working" && said.answer.value === "yes";

/** What a remark beside a mark says of how it works. */
const workingByNote = (asked: Asked): Answered => {
  const own =
    asked.note === "" ? undefined : ownOption({ ...asked, value: { ...asked.value, text: asked.note } });
  return own === "yes" || own === "no" || own === "intermittent" ? working(own) : workingBySense(asked.note);
};

/** "Negative" of a block test: words of one item alone for what is there or is not. */
const presenceByOption = (asked: Asked): Answered | undefined => {
  const own = ownOption(asked);
  return own === "present" || own === "absent" ? presence(own) : undefined;
};

/** Whether a thing is there. A tick means good: of a smell, that there is none. */
const presenceOf = (asked: Asked): Answered => {
  const { item, value } = asked;
  const own = presenceByOption(asked);
  if (own !== undefined) return own;
  const goodIs = item.presence?.goodIs ?? "present";
  const [good, bad]: Presence[] = goodIs === "absent" ? ["absent", "present"] : ["present", "absent"];
  const says = value.outcome?.says;
  if (says === "yes") return presence("present");
  if (says === "no") return presence("absent");
  if (says === "good" && good !== undefined) return presence(good, goodIs !== "neither");
  if (says === "bad" && bad !== undefined) return presence(bad, false);
  for (const { senses, denied } of sensedIn(value.text))
    for (const sense of senses) {
      if ("presence" in sense)
        return presence((sense.presence === "present") === !denied ? "present" : "absent");
      if ("general" in sense && sense.general === "none") return presence("absent");
      if ("fault" in sense && sense.fault === "missing-piece") return presence("absent");
      if ("general" in sense && sense.general === "good" && good !== undefined) return presence(good, false);
    }
  if (/^no\s+\p{L}/iu.test(value.text)) return presence("absent");
  if (/^(slight|strong|some|faint|a little|seen|sighted|shown)\b/i.test(value.text))
    return presence("present");
  return unanswered("no-such-word");
};

/** `185/70R14`, `6.00-16`, `155 SR 13`, `31x10.5`. */
const TIRE_SIZE =
  /\d{2,3}\s*\/\s*\d{2}|\d\.\d{2}|\b\d{3}\s?[A-Z]{1,2}\s?\d{2}\b|[A-Z]R?\d{2}-1\d|\d{2}\s?x\s?\d/i;

/** `Not working` is no kind of gearbox. */
const saysOfWork = (text: string): boolean =>
  !/\d/.test(text) && sensedIn(text).some(({ senses }) => senses.some((sense) => "working" in sense));

/** `175 R 14 all round` */
const ofAll = (text: string): string =>
  text.replace(/\s*,?\s+(?:all (?:a?round|four|same)|on all(?: four)?|each|x ?4|both)$/i, "");

const TIRE_IDENTIFICATION = "wheels.tire-identification";

/** A code is what stands there, spaces put in order; a word of a checklist is none. */
const codeOf = ({ item, value }: Asked): Answered => {
  const whole = value.text.replaceAll(/\s+/g, " ").trim();
  const text =
    item.id === TIRE_IDENTIFICATION ? whole.replace(/^(?:date|dot|week|code)\b:?\s+/i, "") : ofAll(whole);
  if (/^(?:none|not) (?:seen|visible|found|legible|readable)$/i.test(text))
    return answered({ kind: "not-seen", reason: "not-reached" });
  if (outcomeOf(value.text) !== undefined || text === "" || saysOfWork(text))
    return unanswered("no-such-word");
  const kinds = lexiconVersion1.marks.codeWords[item.id];
  if (kinds !== undefined && !kinds.test(text)) return unanswered("no-such-word");
  const system = item.code?.system ?? "text";
  if (system !== "text" && !/\d/.test(text)) return unanswered("no-such-word");
  if (system === "tire-size" && !TIRE_SIZE.test(text)) return unanswered("no-such-word");
  if (item.id === TIRE_IDENTIFICATION && /[a-z]{3}/.test(text)) return unanswered("no-such-word");
  if (text.length > 200) return unanswered("no-such-word");
  return answered({ kind: "code", text }, system !== "text");
};

const byKind = (asked: Asked): Answered => {
  switch (asked.item.answer) {
    case "reading":
      return readingOf(asked);
    case "grade":
      return gradeOf(asked);
    case "working":
      return workingOf(asked);
    case "presence":
      return presenceOf(asked);
    case "choice":
      return choiceOf(asked);
    case "code":
      return codeOf(asked);
    case "faults":
      return faultsOf(asked);
    case "color":
      return unanswered("no-such-word");
  }
};

/** "Dark" of an oil or a brake fluid is its color. */
const isColor = (text: string, { item, labels }: Asked): boolean =>
  /^dark$/i.test(text.trim()) &&
  (item.answer === "choice" || labels.some((label) => /\b(?:oil|fluid|coolant|atf)\b/i.test(label.text)));

/** What every item may be answered with: that it was not seen, that the car has none. */
const ofEveryItem = (asked: Asked): Answered | undefined => {
  const { item, value } = asked;
  if (/^#(REF|N\/A|VALUE|DIV\/0|NAME|NUM|NULL|SPILL)[!?]?/i.test(value.text))
    return unanswered("spreadsheet-error");
  if (value.outcome?.says === "unseen" && !isColor(value.text, asked))
    return answered({ kind: "not-seen", reason: value.outcome.reason });
  if (value.outcome?.says === "not-applicable")
    return item.equipment === true ? answered({ kind: "not-fitted" }) : unanswered("nothing-said");
  for (const { senses, denied } of value.numeric ? [] : sensedIn(value.text)) {
    const unseen = senses.find((sense) => "unseen" in sense);
    if (unseen !== undefined && !denied && unseen.unseen !== "covered")
      return answered({
        kind: "not-seen",
        reason:
          unseen.unseen === "not-reached"
            ? "not-reached"
            : unseen.unseen === "needs-dismantling"
              ? "needs-dismantling"
              : "not-tested",
      });
    if (
      item.equipment === true &&
      senses.some((sense) => "general" in sense && sense.general === "not-fitted")
    )
      return answered({ kind: "not-fitted" });
  }
  return undefined;
};

const optionIn = (answer: Answer): string => {
  if (answer.kind === "choice") return answer.option;
  if (answer.kind === "working") return answer.value;
  return answer.kind === "faults" && answer.found.length === 0 ? "none" : answer.kind;
};

/** Whether the words give less than the answer: of a title in the seller's name nobody says where it lies. */
const isTooMuch = ({ item, value, note }: Asked, made: Answered): boolean =>
  made.ok &&
  lexiconVersion1.marks.tooMuch[`${item.id} ${optionIn(made.answer)}`]?.test(`${value.text} ${note}`) ===
    true;

/**
 * What a value of a sheet answers to an item, or why it answers nothing.
 *
 * @example answerOf({ item: horn, value: readValue("✓", { comma: false }), … }) // { ok: true, answer: { kind: "working", value: "yes" }, sure: true }
 */
export const answerOf = (asked: Asked): Answered => {
  const made = ofEveryItem(asked) ?? byKind(asked);
  if (!isTooMuch(asked, made)) return made;
  return unanswered(made.ok && made.answer.kind === "not-fitted" ? "nothing-said" : "no-such-word");
};
