import type { Answer, AnswerOf } from "@evenhand/shared/answer";
import { HOUSE_GRADES } from "@evenhand/shared/terms";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import { MISREADINGS } from "./assumptions.ts";
import type { Draws } from "./draws.ts";
import { faultsSeen } from "./look-faults.ts";
import { gaugeOf, readingsOf } from "./look-readings.ts";
import type { Gauge } from "./look-readings.ts";
import type { Person } from "./people.ts";
import type { Known, Truth } from "./truth.ts";

/** One person at one car: what their looks at one item share is drawn once and kept. */
export type Looking = {
  readonly person: Person;
  readonly draws: Draws;
  readonly sheet: Sheet;
  readonly gauges: Map<string, Gauge>;
  readonly leans: Map<string, number>;
  /** Places they have made up their mind about: nothing keeps them from answering. */
  readonly sure: ReadonlySet<string>;
};

export const looking = (
  person: Person,
  sheet: Sheet,
  draws: Draws,
  sure: ReadonlySet<string> = new Set(),
): Looking => ({
  person,
  draws,
  sheet,
  gauges: new Map(),
  leans: new Map(),
  sure,
});

const kept = <Value>(values: Map<string, Value>, key: string, draw: () => Value): Value => {
  const known = values.get(key);
  if (known !== undefined) return known;
  const value = draw();
  values.set(key, value);
  return value;
};

/** The gauge somebody reads an item with, one for all its places; `undefined` where the item is no reading. */
export const gaugeFor = ({ id, reading }: Item, { person, draws, gauges }: Looking): Gauge | undefined =>
  reading === undefined ? undefined : kept(gauges, id, () => gaugeOf(person, reading, draws));

const gradeSeen = (item: Item, deserves: number, { person, draws, leans }: Looking): AnswerOf<"grade"> => {
  const { gradeLean, gradeScatter } = person.rates;
  const lean = kept(leans, item.id, () => gradeLean * draws.normal());
  const steps = deserves * HOUSE_GRADES.length + lean + gradeScatter * draws.normal();
  const place = Math.min(HOUSE_GRADES.length - 1, Math.max(0, Math.floor(steps)));
  return { kind: "grade", scale: "house", value: HOUSE_GRADES[place] ?? "even-wear" };
};

const workingSeen = (word: string, { person, draws }: Looking): AnswerOf<"working"> => {
  const { rates } = person;
  if (word === "intermittent") {
    return { kind: "working", value: draws.chance(rates.seesIntermittent) ? "intermittent" : "yes" };
  }
  const works = (word === "yes") !== draws.chance(rates.wrongYesNo);
  return { kind: "working", value: works ? "yes" : "no" };
};

const presenceSeen = (word: string, { person, draws }: Looking): AnswerOf<"presence"> => {
  const isThere = (word === "present") !== draws.chance(person.rates.wrongYesNo);
  return { kind: "presence", value: isThere ? "present" : "absent" };
};

const optionSeen = (item: Item, word: string, { person, draws }: Looking): string => {
  const options = (item.choice?.options ?? []).map(({ id }) => id).filter((id) => id !== "not-known");
  const others = options.filter((id) => id !== word);
  if (others.length === 0) return word;
  if (item.choice?.ordered !== true) {
    return draws.chance(person.rates.otherOption) ? draws.pick(others) : word;
  }
  if (!draws.chance(person.rates.neighborOption)) return word;
  const at = options.indexOf(word);
  return draws.pick([at - 1, at + 1].flatMap((place) => options[place] ?? []));
};

/** What somebody claims is no look, and nobody takes one claim for its neighbor. */
const choiceSeen = (item: Item, word: string, also: readonly string[], at: Looking): AnswerOf<"choice"> => {
  const { draws, person } = at;
  if (draws.chance(person.rates.notKnown)) return { kind: "choice", option: "not-known" };
  const option = optionSeen(item, word, at);
  const rest = also.filter((id) => id !== option && !draws.chance(person.rates.missesOption));
  return rest.length === 0 ? { kind: "choice", option } : { kind: "choice", option, also: rest };
};

const LOOK_ALIKE: Readonly<Record<string, string>> = {
  "0": "O",
  O: "0",
  "1": "7",
  "7": "1",
  "3": "8",
  "8": "3",
  "5": "6",
  "6": "5",
  B: "8",
  E: "F",
  F: "E",
  P: "R",
  R: "P",
  "2": "Z",
  Z: "2",
  "4": "9",
  "9": "4",
};

/** A code as it is misread: mostly a look-alike, now and then a character dropped, two exchanged, or another one altogether. */
export const misread = (text: string, draws: Draws): string => {
  const signs = Array.from(text);
  const at = draws.pick(signs.flatMap((sign, index) => (/[A-Z0-9]/i.test(sign) ? [index] : [])));
  const sign = signs[at] ?? "";
  const kind = draws.uniform();
  const { lookAlike, dropped, exchanged } = MISREADINGS;
  const alike = LOOK_ALIKE[sign];
  if (kind < lookAlike && alike !== undefined) return signs.with(at, alike).join("");
  if (kind < lookAlike + dropped) return signs.toSpliced(at, 1).join("");
  const next = signs[at + 1];
  if (kind < lookAlike + dropped + exchanged && next !== undefined && /[A-Z0-9]/i.test(next)) {
    return signs
      .with(at, next)
      .with(at + 1, sign)
      .join("");
  }
  return signs.with(at, draws.pick(Array.from(/\d/.test(sign) ? "0123456789" : "ACEHKMNT"))).join("");
};

const answerTo = (item: Item, truth: Truth, at: Looking, claims: boolean): Answer => {
  const { person, draws, sheet } = at;
  switch (truth.kind) {
    case "reading": {
      const gauge = gaugeFor(item, at);
      if (item.reading === undefined || gauge === undefined) throw new Error(`${item.id} is no reading`);
      return readingsOf(item.reading, truth.value, gauge, person, draws);
    }
    case "grade":
      return gradeSeen(item, truth.deserves, at);
    case "word":
      return item.answer === "working"
        ? workingSeen(truth.word, at)
        : item.answer === "presence"
          ? presenceSeen(truth.word, at)
          : claims
            ? { kind: "choice", option: truth.word }
            : choiceSeen(item, truth.word, truth.also, at);
    case "code":
      return {
        kind: "code",
        text: draws.chance(person.rates.misreadsCode) ? misread(truth.text, draws) : truth.text,
      };
    case "faults":
      return faultsSeen(item, truth.found, person, sheet, draws);
    case "color":
      return colorSeen(truth, item, at);
    case "not-fitted":
      return { kind: "not-fitted" };
  }
};

const colorSeen = (
  { L, a, b }: Extract<Truth, { kind: "color" }>,
  { color }: Item,
  { person, draws }: Looking,
): AnswerOf<"color"> => {
  const off = () => (person.noise * (color?.repeatability ?? 0) * draws.normal()) / Math.sqrt(3);
  const values = [0, 1, 2].map(() => ({ L: L + off(), a: a + off(), b: b + off() }));
  return { kind: "color", geometry: "45/0", metallic: false, values };
};

/** What one person answers of one place: what they see there, with the slips people make, or that they could not look. */
export const lookAt = ({ item, truth, key }: Pick<Known, "item" | "truth" | "key">, at: Looking): Answer => {
  const { draws, person, sure } = at;
  const claims = item.asked === "statement" || sure.has(key);
  return !claims && draws.chance(person.rates.notSeen)
    ? { kind: "not-seen", reason: "not-reached" }
    : answerTo(item, truth, at, claims);
};
