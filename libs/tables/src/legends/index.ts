import type { GradeScale } from "@evenhand/shared/report";
import { gradeScale } from "../answer-of/grade.ts";
import type { Grid } from "../grid/index.ts";
import { labelOf } from "../label/index.ts";
import { explainedLetters } from "../letter-grades/index.ts";
import { outcomeOf } from "../outcome-words/index.ts";
import type { Outcome } from "../outcome-words/index.ts";
import { sensedIn } from "../sensed-words/index.ts";

type Named = { readonly key: string; readonly meaning: string };

/** `1 very good, 2 good, 3 usable`: three or more parts, each a grade and its meaning. */
const listed = (text: string): Named[] => {
  const parts = text
    .replace(/^[^:]{1,30}:\s*/, "")
    .split(/\s*[,;/|]\s*|\s{2,}/)
    .filter((part) => !/^[A-Z]{2}\s+not /.test(part));
  const named = parts.map((part) => /^([A-F]|\d{1,2})\s+([a-z][a-z' ]{1,40})$/i.exec(part));
  if (parts.length < 3 || named.some((one) => one === null)) return [];
  return named.flatMap((one) => (one?.[1] === undefined ? [] : [{ key: one[1], meaning: one[2] ?? "" }]));
};

/** `1 poor - 5 perfect`, `from 1 (worst) to 10 (best)`: the ends of a scale. */
const endsIn = (text: string): Named[] => {
  const found =
    /(?<![\w.])([01])\s*\(?([a-z][a-z ]{2,20}?)\)?\s*(?:-|–|to|\.\.|,|;|\/)\s*(5|10)\s*\(?([a-z][a-z ]{2,20})\)?/i.exec(
      text,
    );
  return found === null
    ? []
    : [
        { key: found[1] ?? "", meaning: (found[2] ?? "").trim() },
        { key: found[3] ?? "", meaning: (found[4] ?? "").trim() },
      ];
};

/** `A = as new  B = good`, `1 - poor, 5 - excellent`: grades and what they mean. */
const legendIn = (text: string): Named[] => {
  const found = Array.from(
    text.matchAll(
      /(?<![\w.])([A-F]|\d{1,2})\s*(?:=|:|-|–|\bis\b)\s*([A-Za-z][^=;,|\n]*?)(?=\s*(?:[;,|\n]|\s[A-F]\s*[=:–-]|\s\d{1,2}\s*[=:–-]|$))/g,
    ),
  );
  const named = found.map((match) => ({ key: match[1] ?? "", meaning: (match[2] ?? "").trim() }));
  if (named.length >= 2) return named;
  const all = listed(text);
  return all.length > 0 ? all : endsIn(text);
};

const POINTS: readonly (readonly [points: number, words: RegExp])[] = [
  [5, /\b(as|like) new|excellent|perfect|mint|best|concours|new\b|show/i],
  [4, /very good|good|clean|nice/i],
  [3, /fair|average|ok|acceptable|worn|used|even/i],
  [2, /needs? work|poor|rough|heavy|tired|attention/i],
  [1, /finished|bad|scrap|spent|replace|fail|unsafe|worst|terrible|useless|very poor|unserviceable/i],
];

/** How good a grade's meaning is, 5 best; found from its words alone. */
export const pointsOf = (meaning: string): number | undefined => {
  if (/very poor/i.test(meaning)) return 1;
  const found = POINTS.find(([, words]) => words.test(meaning));
  if (found !== undefined) return found[0];
  const grade = sensedIn(meaning)
    .flatMap(({ senses }) => senses)
    .find((sense) => "grade" in sense);
  return grade === undefined
    ? undefined
    : ["spent", "heavy-wear", "even-wear", "light-wear", "as-new"].indexOf(grade.grade) + 1;
};

/** From the keys a legend names to all between them: `1 = poor, 5 = like new` has 2, 3 and 4 as well. */
const between = (named: readonly Named[]): string[] => {
  const keys = named.map(({ key }) => key);
  if (!keys.every((key) => /^\d+$/.test(key))) return keys;
  const numbers = keys.map(Number);
  const [least, most] = [Math.min(...numbers), Math.max(...numbers)];
  return Array.from({ length: most - least + 1 }, (_, at) => String(least + at));
};

const byKey = (a: string, b: string): number =>
  /^\d+$/.test(a) ? Number(a) - Number(b) : a.localeCompare(b);

/** Worst first: by the points of the first and the last meaning; without any, higher numbers are better and earlier letters. */
const worstFirst = (named: readonly Named[]): string[] => {
  const keys = between(named).toSorted(byKey);
  const sorted = named.toSorted((a, b) => byKey(a.key, b.key));
  const [first, last] = [pointsOf(sorted[0]?.meaning ?? ""), pointsOf(sorted.at(-1)?.meaning ?? "")];
  const rising =
    first === undefined || last === undefined || first === last ? /^\d/.test(keys[0] ?? "") : first < last;
  return rising ? keys : keys.toReversed();
};

/** Whether a text is a legend of grades or of marks. */
export const isLegend = (text: string): boolean =>
  legendIn(text).length >= 2 ||
  marksIn(text).length >= 2 ||
  explainedLetters(text) !== undefined ||
  /[✓✔☑√]\s*=\s*\p{L}|^\s*[xX*•]\s*=\s*\p{L}/u.test(text) ||
  (text.match(/\b(?:green|amber|yellow|orange|red)\s*(?:=|:|-|–)\s*\p{L}/giu)?.length ?? 0) >= 2;

const MEANINGS: readonly (readonly [words: RegExp, outcome: Outcome])[] = [
  [/^not (?:tested|checked|tried)|^untested/i, { says: "unseen", reason: "not-tested" }],
  [/^not (?:seen|inspected|accessible)/i, { says: "unseen", reason: "not-reached" }],
  [/^(?:n\/?a|not (?:applicable|fitted))/i, { says: "not-applicable" }],
  [
    /attention|repair|replace|advis|watch|monitor|soon|fail|defect|fault|bad\b|unserviceable|urgent|reject|worn|^red\b|^amber\b|^yellow\b/i,
    { says: "bad" },
  ],
  [/^green\b/i, { says: "good" }],
  [/^(?:no (?:action|work|fault)|in order|all right)/i, { says: "good" }],
  [/^(?:good|ok|okay|fine|pass|passed|satisfactory|serviceable|sound|works|in order)\b/i, { says: "good" }],
];

const meaningOf = (text: string): Outcome | undefined =>
  outcomeOf(text) ?? MEANINGS.find(([words]) => words.test(text))?.[1];

/** `G = good, A = attention soon, R = repair now`: letters that stand for what was found. */
const marksIn = (text: string): (readonly [mark: string, outcome: Outcome])[] => {
  const named = Array.from(
    text.matchAll(
      /(?<!\w)([A-Z]{1,2}|\d)\s*(?:=|:|-|–)\s*([A-Za-z][^=;,|\n]*?)(?=\s*(?:[;,|\n]|\s(?:[A-Z]{1,2}|\d)\s*(?:=|:|-|–)|$))/g,
    ),
  ).map((match) => ({ mark: (match[1] ?? "").toLowerCase(), outcome: meaningOf((match[2] ?? "").trim()) }));
  const marks = named.flatMap(({ mark, outcome }) =>
    outcome === undefined ? [] : [[mark, outcome] as const],
  );
  return marks.length === named.length ? marks : [];
};

/**
 * What letters stand for in a sheet that explains them, where they say good and bad and grade nothing.
 *
 * @example
 * marksOf([grid("Key: G = good, R = repair")]).get("r") // { says: "bad" }
 */
export const marksOf = (grids: readonly Grid[]): ReadonlyMap<string, Outcome> => {
  for (const { rows } of grids)
    for (const { cells } of rows) {
      const marks = new Map(cells.flatMap(({ text, under }) => (under === undefined ? marksIn(text) : [])));
      const says = new Set([...marks.values()].map((outcome) => outcome.says));
      if (says.has("good") && says.has("bad")) return marks;
    }
  const unseen = unseenMarks(grids);
  const lit = grids.some(({ rows }) =>
    rows.some(({ cells }) => cells.some(({ text }) => TRAFFIC_LIGHT.test(text.trim()))),
  );
  return lit || usesLights(grids) ? new Map([...LIGHTS, ...unseen]) : unseen;
};

/** `NS not seen`: letters for what was not looked at, beside whatever scale. */
const unseenMarks = (grids: readonly Grid[]): ReadonlyMap<string, Outcome> => {
  const found = new Map<string, Outcome>();
  for (const { rows } of grids)
    for (const { cells } of rows.slice(0, HEAD_ROWS))
      for (const { text } of cells)
        for (const match of text.matchAll(/(?<!\w)([A-Z]{1,2})\s*(?:=|:|-|–)?\s+(not [a-z]+)\b/g)) {
          const outcome = meaningOf(match[2] ?? "");
          if (outcome?.says === "unseen" || outcome?.says === "not-applicable")
            found.set((match[1] ?? "").toLowerCase(), outcome);
        }
  return found;
};

/** So many cells that say nothing but a color, good ones and bad, are marks. */
const LEAST_LIGHTS = 5;

const usesLights = (grids: readonly Grid[]): boolean => {
  const counts = new Map<string, number>();
  for (const { rows } of grids)
    for (const { cells } of rows)
      for (const { text } of cells) {
        const says = LIGHTS.get(/^\w$/.test(text.trim()) ? "" : text.trim().toLowerCase())?.says;
        if (says !== undefined) counts.set(says, (counts.get(says) ?? 0) + 1);
      }
  const [good = 0, bad = 0] = [counts.get("good"), counts.get("bad")];
  return good > 0 && bad > 0 && good + bad >= LEAST_LIGHTS;
};

/** `RAG` over a column needs no key. Common practice, no source. */
const TRAFFIC_LIGHT = /^(?:r\W?a\W?g|traffic lights?)(?:\s+(?:status|rating))?$/i;

const LIGHTS: ReadonlyMap<string, Outcome> = new Map(
  ["r", "red", "a", "amber", "y", "yellow", "orange", "g", "green"].map((mark) => [
    mark,
    { says: mark.startsWith("g") ? "good" : "bad" },
  ]),
);

/** The scale of grades a sheet explains anywhere in it; its first where it explains several. */
export const legendOf = (grids: readonly Grid[]): GradeScale | undefined => {
  if ([...marksOf(grids).keys()].some((mark) => /^\d$/.test(mark))) return undefined;
  for (const { rows } of grids)
    for (const { cells } of rows) {
      const named = cells.flatMap(({ text, under }) => (under === undefined ? legendIn(text) : []));
      const distinct = [...new Map(named.map((one) => [one.key, one])).values()];
      if (distinct.length >= 2) return gradeScale("grades", worstFirst(distinct));
    }
  for (const { rows } of grids)
    for (const { cells } of rows.slice(0, HEAD_ROWS)) {
      const [only, ...more] = cells.filter(({ text, under }) => text.trim() !== "" && under === undefined);
      const scale = more.length > 0 ? undefined : outOf(only?.text ?? "");
      if (scale !== undefined) return scale;
    }
  return undefined;
};

/** Rows in which a title may say how a sheet grades. */
const HEAD_ROWS = 8;

/** `All marks out of 10`, `graded 1-5`: said once, above everything. */
const outOf = (text: string): GradeScale | undefined => {
  if (!/\b(?:grade[sd]?|mark(?:s|ed)?|scored?|scores|rat(?:ed|ing|ings)|points|scale)\b/i.test(text))
    return undefined;
  const most = /\bout of (5|10)\b/i.exec(text)?.[1];
  return scaleInHeading(most === undefined ? text : `1-${most}`);
};

/** Grades that head columns to be ticked, worst first. */
export const scaleOfHeadings = (names: readonly string[]): GradeScale | undefined => {
  if (names.length < 2) return undefined;
  const points = names.map((name) =>
    /^[A-F]$/i.test(name) ? 70 - (name.toUpperCase().codePointAt(0) ?? 0) : pointsOf(name),
  );
  const [first, last] = [points[0], points.at(-1)];
  const falling = first !== undefined && last !== undefined && first > last;
  const ordered = falling ? names.toReversed() : names;
  return gradeScale(
    `grades-${ordered.length}-${labelOf(ordered[0] ?? "").stems[0] ?? "x"}`.toLowerCase(),
    ordered,
  );
};

/** `1-5`, `(1–10)`: a scale of numbers in a heading, its end the better one where nothing else is said. */
export const scaleInHeading = (heading: string): GradeScale | undefined => {
  const found = /\(?\b([01])\s*(?:-|–|to|\.\.)\s*(5|10)\b\)?/.exec(heading);
  if (found === null) return undefined;
  const [from, to] = [Number(found[1]), Number(found[2])];
  return gradeScale(
    `grades-${from}-${to}`,
    Array.from({ length: to - from + 1 }, (_, at) => String(from + at)),
  );
};
