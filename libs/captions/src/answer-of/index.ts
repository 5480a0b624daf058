import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import type { Mention, Said } from "@evenhand/lexicon/find-mentions";
import type { Answer, Fault } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { UnitSymbol as Unit } from "@evenhand/shared/unit";
import { convert } from "@evenhand/measurement/unit";
import { fahrenheitFrom, plainRanges } from "./ranges.ts";

/** A word of condition as it stands in a remark: what it may mean, and whether it was said not to be so. */
export type SaidWord = {
  readonly meanings: readonly Said[];
  readonly negated: boolean;
  readonly from: number;
  readonly to: number;
};
export type SaidNumber = Extract<Mention, { is: "number" }>;

/** What was said in one breath, as far as it can answer an item. */
export type SaidOf = {
  readonly words: readonly SaidWord[];
  readonly numbers: readonly SaidNumber[];
  /** The subject was named in the same breath. */
  readonly named: boolean;
  /** The item is the first that its subject may mean. */
  readonly isFirst: boolean;
  /** A fault of its kind has an item of its own beside this one. */
  readonly faultsElsewhere: readonly string[];
  /** The subject itself was said not to be there: "no radio". */
  readonly noSubject: boolean;
  /** It was said to be there: "it has", "there's". */
  readonly has: boolean;
  readonly yesOrNo: "yes" | "no" | undefined;
  /** The bare words, for what hangs on one of them. */
  readonly text: string;
  /** What was said of a part is of its paint: "the paint on it is original". */
  readonly ofPaint: boolean;
  readonly year: number;
  /** A number without a unit may be meant for it. */
  readonly bare: boolean;
};

const sensesOf = (word: SaidWord, { lexicon }: CompiledLexicon) =>
  word.meanings.flatMap((meaning) =>
    meaning.is === "condition" ? (lexicon.conditions[meaning.condition]?.senses ?? []) : [],
  );

const longestFirst = (words: readonly SaidWord[]): readonly SaidWord[] =>
  words.toSorted((a, b) => b.to - b.from - (a.to - a.from) || a.from - b.from);

type OptionSaid = { readonly option: string; readonly negated: boolean; readonly word: SaidWord };

const optionsSaid = (item: Item, { words }: SaidOf): OptionSaid[] =>
  longestFirst(words).flatMap((word) =>
    word.meanings.flatMap((meaning) =>
      meaning.is === "option" && meaning.item === item.id
        ? [{ option: meaning.option, negated: word.negated, word }]
        : [],
    ),
  );

/** What the denial of an option says, where it says anything: not original is of another kind, not repainted is original. */
const DENIED: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "identity.originality": { "original-to-car": "other-type" },
  "body.paint-history": { refinished: "original", original: "refinished", repaired: "original" },
  "identity.miles-claim": { actual: "unknown" },
  "body.magnet": { holds: "falls" },
  "engine.rebuild-claim": { rebuilt: "never" },
  "identity.registration": { current: "lapsed" },
  "underbody.floor-repair": { patched: "as-built", replaced: "as-built" },
  "driveline.tank-inside": { rusty: "clean" },
  "interior.trim-history": { original: "retrimmed-right" },
  "identity.title-holder": { "seller-in-hand": "seller-not-in-hand" },
  "wheels.wheel-kind": { "original-to-car": "other-type" },
};

const isGood = (item: Item, option: string): boolean =>
  item.choice?.options.find(({ id }) => id === option)?.call === "good";

const goodOption = (item: Item): string | undefined => {
  const good = (item.choice?.options ?? []).filter(({ id }) => isGood(item, id));
  return good.length === 1 ? good[0]?.id : undefined;
};

const NONE = new Set(["none", "absent", "dry", "never-imported", "no-title"]);
/** "No" to these is no more than no. */
const WITHOUT_NO = /^identity\.(?!lien)/u;
const WITHOUT_GENERAL =
  /^identity\.|^visit\.|^body\.|fluid-kind|brakes\.circuit|tire-age|tire-construction|wheel-kind|fixing-kind|collision|rebuild|trim-history|floor-repair|damp|^road\.|smoke|leaks/u;

const generalChoice = (item: Item, said: SaidOf, compiled: CompiledLexicon): string | undefined => {
  if (!said.isFirst) return undefined;
  for (const word of longestFirst(said.words))
    for (const sense of sensesOf(word, compiled)) {
      if (!("general" in sense)) continue;
      if (sense.general === "none") return item.choice?.options.find(({ id }) => NONE.has(id))?.id;
      if (
        (sense.general === "good" || sense.general === "new") &&
        !word.negated &&
        !WITHOUT_GENERAL.test(item.id)
      )
        return goodOption(item) ?? item.choice?.options.find(({ id }) => isGood(item, id))?.id;
    }
  return undefined;
};

const choose = (option: string | undefined): Answer | undefined =>
  option === undefined ? undefined : { kind: "choice", option };

/** Words that say less than another beside them: "leaks, like a seep". */
const VAGUE = new Set(["leak", "leaking", "leaky"]);

const choiceAnswer = (
  item: Item,
  said: SaidOf,
  compiled: CompiledLexicon,
  textOf: (word: SaidWord) => string,
): Answer | undefined => {
  const options = optionsSaid(item, said);
  const firm = options.filter(({ word }) => !VAGUE.has(textOf(word)));
  const plain = firm.find(({ negated }) => !negated) ?? options.find(({ negated }) => !negated);
  if (item.id === "identity.keys" && plain === undefined && said.isFirst && said.numbers.at(0)?.value === 2)
    return choose("full-set");
  if (item.id === "wheels.tire-age") return choose(ageOption(said, compiled));
  if (plain?.option === "tick-warm" && /\bcold\b/u.test(said.text) && !/\b(?:warm|hot)\b/u.test(said.text))
    return choose("tick-cold");
  if (plain !== undefined && !covered(plain, options)) return choose(plain.option);
  const denied = options.find(({ negated }) => negated);
  if (denied !== undefined) {
    const opposite = DENIED[item.id]?.[denied.option];
    if (opposite !== undefined) return choose(opposite);
    return isGood(item, denied.option) ? undefined : choose(goodOption(item));
  }
  if (said.yesOrNo === "no" && said.isFirst && !WITHOUT_NO.test(item.id)) {
    const none = item.choice?.options.find(({ id }) => NONE.has(id) && id !== "never-imported")?.id;
    if (none !== undefined) return choose(none);
  }
  if (said.noSubject && !item.id.startsWith("identity.originality")) {
    const none = item.choice?.options.find(({ id }) => NONE.has(id))?.id;
    if (none !== undefined) return choose(none);
  }
  return choose(generalChoice(item, said, compiled));
};

/** A shorter phrase within a longer one that was denied says nothing by itself. */
const covered = (one: OptionSaid, all: readonly OptionSaid[]): boolean =>
  all.some(
    (other) =>
      other !== one &&
      other.word.from <= one.word.from &&
      other.word.to >= one.word.to &&
      other.word.to - other.word.from > one.word.to - one.word.from &&
      other.negated,
  );

const YEARS_NEW = 1;
const ageOption = (said: SaidOf, compiled: CompiledLexicon): string | undefined => {
  const since = said.numbers.find(
    ({ unit, value }) => unit === undefined && value >= 1950 && value <= said.year,
  );
  const years =
    since === undefined
      ? said.numbers.findLast(({ unit }) => unit === "years")?.value
      : said.year - since.value;
  if (years !== undefined && (since !== undefined || /\b(?:old|aged|age|year)\b/u.test(said.text))) {
    if (years > 10 || (years === 10 && /\b(?:over|more|than)\b/u.test(said.text))) return "over-ten-years";
    if (years > 6) return "over-six-years";
    return years >= 3 ? "three-to-six-years" : years < YEARS_NEW ? "new" : "under-three-years";
  }
  const isNew = said.words.some(
    (word) =>
      !word.negated &&
      sensesOf(word, compiled).some((sense) => "general" in sense && sense.general === "new"),
  );
  const like = said.words.some((word) =>
    sensesOf(word, compiled).some((sense) => "grade" in sense && sense.grade === "as-new"),
  );
  return isNew ? "new" : like && /\bbrand new\b/u.test(said.text) ? "new" : undefined;
};

const LENGTHS = new Set(["mm", "cm", "in", "ft"]);

/** A length said with one fault. */
export const extentOf = (numbers: readonly SaidNumber[], kinds: number): Fault["extent"] => {
  const lengths = numbers.filter(({ unit }) => unit !== undefined && LENGTHS.has(unit));
  const [only] = lengths;
  if (kinds !== 1 || lengths.length !== 1 || only?.unit === undefined) return undefined;
  return { value: Number(convert(only.value, Unit.parse(only.unit), "mm").toPrecision(12)), unit: "mm" };
};

/** Metal that is praised is without rust; glass, rubber and springs that are praised are without any fault. */
const RUSTS = ["corrosion", "perforation"];

const praised = (item: Item, word: string): { denied: string[] | "all" } | undefined => {
  const kinds = item.faults?.kinds ?? [];
  if (
    /^(?:no fault|nothing wrong|perfect|flawless|spotless)/u.test(word) &&
    /^(?:body|brightwork)/u.test(item.id)
  )
    return { denied: "all" };
  if (/straight/u.test(word) && item.id === "wheels.wheel-faults") return { denied: ["bend"] };
  if (/straight/u.test(word)) return item.id === "body.faults" ? { denied: ["dent"] } : undefined;
  if (item.section === "wheels") return undefined;
  const metal =
    RUSTS.every((kind) => kinds.includes(kind)) ||
    (kinds.includes("corrosion") && /^(?:body|doors|trunk|underbody)$/u.test(item.section));
  if (!metal) return { denied: "all" };
  // That nothing leaks denies no rust.
  if (/\b(?:dry|leak|leaking)\b/u.test(word)) return undefined;
  if (item.id === "body.faults")
    return /^(?:solid|sound|rust free|healthy|intact|rock solid|hard as|solid as)/u.test(word)
      ? { denied: RUSTS }
      : undefined;
  if (item.id === "doors.bottoms" && word === "clean") return { denied: "all" };
  return { denied: RUSTS };
};

const faultsAnswer = (
  item: Item,
  said: SaidOf,
  compiled: CompiledLexicon,
  tokens: (word: SaidWord) => string,
): Answer | undefined => {
  const kinds = item.faults?.kinds ?? [];
  const found = new Set<string>();
  const denied = new Set<string>();
  let all = false;
  const taken: SaidWord[] = [];
  const praise: SaidWord[] = [];
  const isPraised = ({ from, to }: SaidWord): boolean =>
    praise.some((one) => one.from <= from && one.to >= to && one.to - one.from > to - from);
  for (const word of longestFirst(said.words)) {
    if (taken.some(({ from, to }) => from <= word.from && to >= word.to)) continue;
    for (const sense of sensesOf(word, compiled)) {
      // A bumper has dents, and no smaller ones beside them.
      const larger = "fault" in sense && sense.fault === "ding" && !kinds.includes("ding") ? "dent" : "";
      if (kinds.includes(larger)) {
        taken.push(word);
        if (word.negated) denied.add(larger);
        else found.add(larger);
      } else if ("fault" in sense && kinds.includes(sense.fault)) {
        if (!word.negated && isPraised(word)) continue;
        taken.push(word);
        if (word.negated) {
          denied.add(sense.fault);
          for (const also of sense.deniesAlso ?? [])
            if (also === "perforation" && kinds.includes(also)) denied.add(also);
        } else found.add(sense.fault);
      } else if ("general" in sense && !word.negated) {
        praise.push(word);
        if (sense.general === "none") all = true;
        if (
          sense.general === "new" &&
          !/^(?:body|brightwork\.(?!glass)|trunk|doors)/u.test(item.id) &&
          item.section !== "underbody"
        )
          all = true;
        if (sense.general === "good") {
          const told = praised(item, tokens(word));
          if (told?.denied === "all") all = true;
          else for (const kind of told?.denied ?? []) if (kinds.includes(kind)) denied.add(kind);
        }
      }
    }
  }
  if (found.size === 0 && denied.size === 0 && !all) return undefined;
  for (const kind of found) denied.delete(kind);
  if (found.has("ding")) denied.delete("dent");
  const extent = extentOf(said.numbers, found.size);
  return {
    kind: "faults",
    found: [...found].map((kind) => ({ kind, ...(extent === undefined ? {} : { extent }) })),
    denied: all && found.size === 0 && denied.size === 0 ? "all" : [...denied],
  };
};

const ORDER = ["spent", "heavy-wear", "even-wear", "light-wear", "as-new"];

export const isFaultElsewhere = (word: SaidWord, said: SaidOf, compiled: CompiledLexicon): boolean =>
  sensesOf(word, compiled).some((sense) => "fault" in sense && said.faultsElsewhere.includes(sense.fault));

const gradeAnswer = (item: Item, said: SaidOf, compiled: CompiledLexicon): Answer | undefined => {
  const works = said.words.some((word) => sensesOf(word, compiled).some((sense) => "working" in sense));
  const own = optionsSaid(item, said).find(({ negated }) => !negated);
  if (own !== undefined) return { kind: "grade", scale: "house", value: own.option };
  for (const word of longestFirst(said.words))
    for (const sense of sensesOf(word, compiled))
      if (
        "grade" in sense &&
        !word.negated &&
        ORDER.includes(sense.grade) &&
        !(works && sense.grade === "even-wear") &&
        !isFaultElsewhere(word, said, compiled)
      )
        return { kind: "grade", scale: "house", value: sense.grade };
  return undefined;
};

const working = (value: "yes" | "no" | "intermittent"): Answer => ({ kind: "working", value });

/** "No heat": the heater is there, and does nothing. */
const NO_HEAT = /\bno heat\b/u;

/** "Hot" of a heater: words that say of one thing alone whether it works. */
const workingByOption = (item: Item, said: SaidOf): Answer | undefined => {
  const [own] = optionsSaid(item, said);
  if (own === undefined) return undefined;
  if (own.option === "intermittent") return own.negated ? undefined : working("intermittent");
  return working((own.option === "yes") === own.negated ? "no" : "yes");
};

const workingAnswer = (item: Item, said: SaidOf, compiled: CompiledLexicon): Answer | undefined => {
  const own = workingByOption(item, said);
  if (own !== undefined) return own;
  // What every car has is not missing where somebody says there is none: "no horn", "no heat".
  if (said.noSubject && (item.equipment !== true || NO_HEAT.test(said.text))) return working("no");
  const senses = longestFirst(said.words).flatMap((word) =>
    sensesOf(word, compiled).map((sense) => ({ sense, word })),
  );
  if (
    senses.some(({ sense, word }) => "working" in sense && sense.working === "intermittent" && !word.negated)
  )
    return working("intermittent");
  for (const { sense, word } of senses)
    if ("working" in sense) return working((sense.working === "yes") === word.negated ? "no" : "yes");
  for (const { sense, word } of senses) {
    if (!("general" in sense)) continue;
    if (sense.general === "good") return working(word.negated ? "no" : "yes");
    if (sense.general === "bad" && !word.negated) return working("no");
  }
  return said.yesOrNo === undefined ? undefined : working(said.yesOrNo);
};

const presence = (value: "present" | "absent"): Answer => ({ kind: "presence", value });

const presenceAnswer = (item: Item, said: SaidOf, compiled: CompiledLexicon): Answer | undefined => {
  const [own] = optionsSaid(item, said);
  if (own !== undefined) return presence((own.option === "present") === own.negated ? "absent" : "present");
  if (said.noSubject) return presence("absent");
  for (const word of longestFirst(said.words))
    for (const sense of sensesOf(word, compiled)) {
      const ofPatch = sensesOf(word, compiled).some((one) => "fault" in one && one.fault === "patch");
      if (!said.isFirst && !ofPatch) continue;
      if ("presence" in sense)
        return presence((sense.presence === "present") === word.negated ? "absent" : "present");
      if ("general" in sense && (sense.general === "none" || sense.general === "not-fitted"))
        return presence("absent");
    }
  if (said.yesOrNo === "no") return presence("absent");
  const isPraised =
    item.presence?.goodIs === "present" &&
    said.isFirst &&
    said.named &&
    said.words.some(({ negated }) => !negated);
  return isPraised || said.has || said.yesOrNo === "yes" ? presence("present") : undefined;
};

const LIKE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "brakes.lining-thickness": { mil: "mm" },
  "brakes.disc-thickness": { mil: "mm" },
  "wheels.tread-depth": { mil: "mm" },
  "engine.vacuum": { in: "inHg" },
};

const scaleOf = (item: Item, value: number): string =>
  value >= (fahrenheitFrom[item.id] ?? 60) ? "degF" : "degC";

/** A number in a unit the item can be read in; `undefined` where it cannot be one of this item. */
export const readingOf = (
  item: Item,
  { value, unit }: Pick<SaidNumber, "value" | "unit">,
  bare: boolean,
): { value: number; unit: UnitSymbol } | undefined => {
  const own = item.reading;
  if (own === undefined || (unit === undefined && !bare)) return undefined;
  const plain = plainRanges[item.id];
  const given = unit === undefined ? plain?.[2] : (LIKE[item.id]?.[unit] ?? unit);
  if (given === undefined) return undefined;
  // "Papers back to 1979" is no count of miles.
  if (unit === undefined && item.id === "identity.odometer" && value >= 1900 && value <= 2100)
    return undefined;
  if (unit === undefined && plain !== undefined && (value < plain[0] || value > plain[1])) return undefined;
  const symbol = Unit.safeParse(
    given === "deg?" ? (own.unit === "deg" ? "deg" : scaleOf(item, value)) : given,
  );
  if (!symbol.success) return undefined;
  const takes = symbol.data === own.unit || own.alsoIn.includes(symbol.data);
  if (/paint/u.test(item.id) && symbol.data === "mm" && value > 3) return undefined;
  return takes ? { value, unit: symbol.data } : undefined;
};

const TIGHT =
  /\b(?:tight|none|no (?:discernible|noticeable|real|excess|excessive|detectable|appreciable|significant|lost|unwanted) (?:free )?(?:play|motion|movement)|no play|no slop|no free play|no measurable)\b/u;

/** "Twelve six" of a battery is 12.6. */
const inTenths = (numbers: readonly SaidNumber[]): readonly SaidNumber[] => {
  const [whole, tenth] = numbers;
  const isOne =
    whole?.to === tenth?.from &&
    whole !== undefined &&
    tenth !== undefined &&
    Number.isInteger(whole.value) &&
    Number.isInteger(tenth.value) &&
    tenth.value < 10;
  return isOne ? [{ ...tenth, value: whole.value + tenth.value / 10 }, ...numbers.slice(2)] : numbers;
};

const readingAnswer = (item: Item, said: SaidOf): Answer | undefined => {
  const numbers = item.id.startsWith("electrics.volts") ? inTenths(said.numbers) : said.numbers;
  for (const heard of numbers) {
    const number =
      /axle-ratio/u.test(item.id) && heard.value > 200 ? { ...heard, value: heard.value / 100 } : heard;
    const read = readingOf(item, number, said.bare);
    if (read !== undefined) return { kind: "reading", unit: read.unit, values: [{ value: read.value }] };
  }
  const isPlay = /play/u.test(item.id);
  if (
    isPlay &&
    item.reading !== undefined &&
    said.numbers.length === 0 &&
    TIGHT.test(said.text) &&
    !/\bnot tight\b/u.test(said.text)
  )
    return { kind: "reading", unit: item.reading.unit, values: [{ value: 0 }] };
  return undefined;
};

const answerByKind = (
  item: Item,
  said: SaidOf,
  compiled: CompiledLexicon,
  tokens: (word: SaidWord) => string,
): Answer | undefined => {
  switch (item.answer) {
    case "choice":
      return choiceAnswer(item, said, compiled, tokens);
    case "faults":
      return faultsAnswer(item, said, compiled, tokens);
    case "grade":
      return gradeAnswer(item, said, compiled);
    case "working":
      return workingAnswer(item, said, compiled);
    case "presence":
      return presenceAnswer(item, said, compiled);
    case "reading":
      return readingAnswer(item, said);
    default:
      return undefined;
  }
};

const generalSaid = (said: SaidOf, compiled: CompiledLexicon, general: string): boolean =>
  said.words.some(
    (word) =>
      !word.negated &&
      sensesOf(word, compiled).some((sense) => "general" in sense && sense.general === general),
  );

/** "There is no radio": the word that something is there, which here says nothing by itself. */
const isThere = (word: SaidWord, compiled: CompiledLexicon): boolean =>
  sensesOf(word, compiled).every((sense) => "presence" in sense && sense.presence === "present");

/**
 * What a remark answers to an item, of the item's own kind; "not fitted" of a thing that a car may lack, "not seen" where somebody says
 * that they have not looked. Nothing where the remark says nothing of it.
 */
export const answerOf = (
  item: Item,
  said: SaidOf,
  compiled: CompiledLexicon,
  textOf: (word: SaidWord) => string,
): Answer | undefined => {
  const unseen = said.words.flatMap((word) =>
    sensesOf(word, compiled).flatMap((sense) => ("unseen" in sense ? [sense.unseen] : [])),
  )[0];
  if (
    unseen === "not-tested" ||
    unseen === "not-reached" ||
    unseen === "needs-dismantling" ||
    unseen === "covered"
  )
    return { kind: "not-seen", reason: unseen };
  const isLacking = said.noSubject && NO_HEAT.test(said.text);
  if (
    item.equipment === true &&
    item.answer !== "presence" &&
    !isLacking &&
    generalSaid(said, compiled, "not-fitted")
  )
    return { kind: "not-fitted" };
  const answer = answerByKind(item, said, compiled, textOf);
  if (answer !== undefined) return answer;
  return item.equipment === true && said.noSubject && said.words.every((word) => isThere(word, compiled))
    ? { kind: "not-fitted" }
    : undefined;
};
