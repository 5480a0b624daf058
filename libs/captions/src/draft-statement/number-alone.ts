import type { SaidNumber } from "../answer-of/index.ts";
import type { Breath } from "./breath.ts";
import { keyOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import { record } from "./record.ts";
import { answerByNumber } from "./said-to.ts";
import { stoodFor } from "./stood.ts";
import { hasWords } from "./talk.ts";

const VOLTS = ["electrics.volts-cranking", "electrics.volts-charging", "electrics.volts-rest"];

export const hasReading = (draft: Draft, keys: readonly string[]): boolean => {
  return keys.some((key) => {
    const answer = draft.remarks.get(key)?.answer;
    return (
      answer?.kind === "reading" ||
      (answer?.kind === "faults" && answer.found.some(({ extent }) => extent !== undefined))
    );
  });
};

/** Miles and cubic inches can only be one thing; pounds of pressure hot are oil's where idle or speed is named. */
export const claimsOfNumberAlone = (draft: Draft, breath: Breath): readonly string[] => {
  const number =
    breath.numbers.find(({ unit }) => unit !== undefined) ?? milesShown(breath) ?? heatShown(breath);
  if (
    number?.unit === undefined ||
    /\b(?:ago|since|after|every|per|rebuilt|year|last|ever|only)\b/u.test(breath.text)
  )
    return [];
  const { unit, value } = number;
  const byContext = (id: string): boolean =>
    draft.context.compiled.lexicon.contexts[id]?.some((one) => hasWords(breath.text, one)) === true;
  const found =
    (unit === "mi" || unit === "km") && value >= 1000
      ? "identity.odometer"
      : unit === "in3" || unit === "cm3"
        ? "engine.displacement"
        : unit.startsWith("deg") &&
            value >= 60 &&
            value <= 250 &&
            /\b(?:settle|sit|stay|hold|run|temp)\b/u.test(breath.text)
          ? "road.temperature-after-20"
          : unit === "psi"
            ? (["engine.oil-pressure-2000", "engine.oil-pressure-idle"].find(byContext) ??
              (breath.sides.index === undefined ? undefined : "engine.compression"))
            : unit === "V"
              ? VOLTS.find(byContext)
              : unit === "inHg"
                ? "engine.vacuum"
                : undefined;
  const item = found === undefined ? undefined : draft.items.get(found);
  if (item === undefined || (found === "identity.odometer" && draft.remarks.has(keyOf(found, "")))) return [];
  const places = item.positions === undefined ? [""] : [`cylinder-${breath.sides.index ?? 1}`];
  const made = record(draft, item, places, answerByNumber(draft, item, breath), breath, false, 1, []);
  const subject = [...draft.context.compiled.subjects.values()].find(({ items }) => items.includes(item.id));
  if (subject !== undefined)
    draft.state.entries = [
      {
        subjects: [subject],
        sides: breath.sides,
        plural: false,
        none: false,
        from: breath.piece.from,
        to: breath.piece.to,
        confidence: 1,
        heard: [],
        context: "",
        within: [],
      },
    ];
  return made;
};

/** "Off the road since 2009." */
export const claimsOfStanding = (
  draft: Draft,
  breath: Breath,
  made: readonly string[],
): readonly string[] => {
  const item = draft.items.get("identity.stood");
  const option = stoodFor(breath.text, breath.numbers, draft.context.year);
  return item === undefined || option === undefined || made.length > 0
    ? []
    : record(draft, item, [""], { kind: "choice", option }, breath, false, 1, []);
};

/** "Runs at one eighty": without a unit it is of heat. */
const heatShown = ({ numbers, text }: Breath): SaidNumber | undefined => {
  const [number] = numbers;
  return number?.unit === undefined &&
    number !== undefined &&
    number.value >= 75 &&
    number.value <= 240 &&
    /\b(?:run|sit|settle|stay)(?: right| happily| steady)? (?:at|around|about|on)\b/u.test(text)
    ? { ...number, unit: "deg?" }
    : undefined;
};

/** "She's got eighty-eight thousand on her": so much on it is miles, where nobody put it there or paid it. */
const ON_IT =
  /^(?!.*\b(?:put|spent|spend|paid|pay|owe|cost|invested|since|engine|motor|tire|clutch|rebuild)\b).*\b(?:thousand|\d{4,6})(?: \S+){0,5} on (?:her|it|him|there|this|this one|this car|the car|the clock)\b/u;
const LEAST_ON_IT = 3000;
const LEAST_HAD = 10_000;

/** "She's got eighty-eight thousand and change": nothing else is had by the thousand. */
const HAS_THOUSANDS =
  /^(?:(?:and|so|now|well) )?(?:it|she|he|this one|this car|the car) (?:has|have|s|is)(?: got)?(?: only| just| about| around| roughly| right around)* (?:(?:an?|[a-z]+ty|[a-z]+teen|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|hundred|and|-) ?)*(?:thousand|\d{5,6}|\d{2,3}k)(?: [a-z]+(?: hundred)?)?$/u;

/** "Ninety-one thousand four hundred showing": without a unit it is of miles. */
const milesShown = ({ numbers, text }: Breath): SaidNumber | undefined => {
  const [number] = numbers;
  if (number?.unit === undefined && number !== undefined && number.value >= LEAST_ON_IT && ON_IT.test(text))
    return { ...number, unit: "mi" };
  if (
    number?.unit === undefined &&
    number !== undefined &&
    number.value >= LEAST_HAD &&
    HAS_THOUSANDS.test(text)
  )
    return { ...number, unit: "mi" };
  return number !== undefined &&
    number.value >= 1000 &&
    /\b(?:showing|indicated|show|it (?:say|says|read|reads)|(?:she|it|he) (?:has|s|is|have) (?:only |just )?(?:done|covered))\b/u.test(
      text,
    )
    ? { ...number, unit: "mi" }
    : undefined;
};

/** "Sixty-five psi at two grand" after the cylinders is of the oil. */
export const isOilPressure = (draft: Draft, { numbers, text }: Breath): boolean => {
  const { contexts } = draft.context.compiled.lexicon;
  return (
    numbers.some(({ unit }) => unit === "psi") &&
    draft.state.reading?.item === "engine.compression" &&
    ["engine.oil-pressure-2000", "engine.oil-pressure-idle"].some(
      (id) => contexts[id]?.some((words) => hasWords(text, words)) === true,
    )
  );
};
