import type { Answer, Fault } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { deltaOf } from "@evenhand/comparison/delta";
import { mean } from "@evenhand/measurement/type-a";
import { houseGrades, houseStep } from "@evenhand/sheet/grade-scale";
import { FALSE } from "./assumptions.ts";
import type { Draws } from "./draws.ts";
import { misread } from "./look.ts";
import { sheet } from "./study.ts";
import type { Plant } from "./study.ts";
import { faultOf, isBadOption } from "./true-car.ts";
import { truthAway } from "./true-readings.ts";
import { word } from "./truth.ts";
import type { Known, Truth } from "./truth.ts";

/** What is so, and what is stated of it. */
export type Lie = { readonly so: Truth; readonly said: Truth };

const falseWord = (item: Item, draws: Draws): Lie | undefined => {
  if (item.answer === "working") return { so: word("no"), said: word("yes") };
  if (item.answer === "presence") {
    const good = item.presence?.goodIs;
    if (good === undefined || good === "neither" || item.presence?.onlyIfPromised === true) return undefined;
    return { so: word(good === "present" ? "absent" : "present"), said: word(good) };
  }
  const options = (item.choice?.options ?? []).map(({ id }) => id);
  const bad = options.filter((id) => isBadOption(item, id));
  const [best] = options;
  return bad.length === 0 || best === undefined || isBadOption(item, best)
    ? undefined
    : { so: word(draws.pick(bad)), said: word(best) };
};

/** Another number: three slips are no slip. */
const otherCode = (text: string, draws: Draws): string => {
  let other = text;
  for (let slip = 0; slip < 3 || other === text; slip += 1) other = misread(other, draws);
  return other;
};

const falseReading = (value: number, { reading }: Item, draws: Draws): Lie | undefined =>
  reading === undefined
    ? undefined
    : {
        so: { kind: "reading", value: truthAway(reading, value, draws.between(FALSE.reading)) },
        said: { kind: "reading", value },
      };

const falseGrade = (deserves: number): Lie => {
  const dressed = FALSE.gradeSteps * houseStep;
  const said = Math.max(deserves, dressed + 0.05);
  return { so: { kind: "grade", deserves: said - dressed }, said: { kind: "grade", deserves: said } };
};

const concealed = (item: Item, draws: Draws): Lie => {
  const kind = draws.pick(item.faults?.kinds ?? []);
  return {
    so: { kind: "faults", found: [faultOf(item, kind, FALSE.faultExtent, sheet.sheet, draws)] },
    said: { kind: "faults", found: [] },
  };
};

/** A false statement on a place, and the bad thing it hides; `undefined` where nothing there is bad by itself. */
export const falseOn = ({ item, truth }: Known, draws: Draws): Lie | undefined => {
  if (item.asked === "statement") return undefined;
  switch (truth.kind) {
    case "reading":
      return falseReading(truth.value, item, draws);
    case "grade":
      return falseGrade(truth.deserves);
    case "word":
      return falseWord(item, draws);
    case "code":
      return { so: truth, said: { kind: "code", text: otherCode(truth.text, draws) } };
    case "faults":
      return concealed(item, draws);
    case "color":
      return { so: truth, said: { ...truth, L: truth.L + 5 } };
    case "not-fitted":
      return undefined;
  }
};

/** So many of the statements are false. */
export const plantFalse =
  (share: number): Plant =>
  (car, draws) => {
    const claims = new Map<string, Truth>();
    const known = car.known.map((one) => {
      const lie = draws.chance(share) ? falseOn(one, draws) : undefined;
      if (lie === undefined) return one;
      claims.set(one.key, lie.said);
      return { ...one, truth: lie.so };
    });
    return { car: { ...car, known }, claims };
  };

const familyOf = (kind: string): string => sheet.faultKinds.get(kind)?.family ?? kind;

const totalOf = (faults: readonly Fault[], family: string): number =>
  faults
    .filter(({ kind }) => familyOf(kind) === family)
    .reduce((sum, { extent }) => sum + (extent?.value ?? 0), 0);

/** More is there, of a family, than was stated and what matters beside it; of what is never a trifle anything at all. */
const hidesFault = (stated: readonly Fault[], there: readonly Fault[]): boolean =>
  there.some(({ kind }) => {
    const family = familyOf(kind);
    const [said, so] = [totalOf(stated, family), totalOf(there, family)];
    const { absolute = 0, share = 0 } = sheet.faultKinds.get(kind)?.delta ?? {};
    const never = sheet.faultKinds.get(kind)?.neverTrifling === true && said === 0;
    return never || so > said + Math.max(absolute, share * said);
  });

/** Which of the house grades it is, counted from the worst; −1 for none. */
export const gradePlace = (value: string | number): number =>
  houseGrades.findIndex((grade) => grade === value);

/** Whether an answer states something else of a place than is so, by more than what matters: a lie, a slip, or something missed. */
export const isFalse = ({ item, truth }: Pick<Known, "item" | "truth">, answer: Answer): boolean => {
  switch (answer.kind) {
    case "reading": {
      if (truth.kind !== "reading" || item.reading === undefined) return false;
      const stated = mean(answer.values.map(({ value }) => value));
      return Math.abs(stated - truth.value) > deltaOf(item.reading.delta, stated, truth.value);
    }
    case "grade":
      return (
        truth.kind === "grade" && Math.abs(gradePlace(answer.value) + 0.5 - truth.deserves / houseStep) > 1.5
      );
    case "working":
    case "presence":
      return truth.kind === "word" && answer.value !== truth.word;
    case "choice":
      return truth.kind === "word" && answer.option !== "not-known" && answer.option !== truth.word;
    case "code":
      return truth.kind === "code" && answer.text !== truth.text;
    case "faults":
      return truth.kind === "faults" && hidesFault(answer.found, truth.found);
    case "color":
    case "not-fitted":
    case "not-seen":
      return false;
  }
};
