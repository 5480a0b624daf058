import { folded } from "../folded/index.ts";
import type { Outcome } from "../outcome-words/index.ts";
import { outcomeOf } from "../outcome-words/index.ts";
import { LETTER_GRADES } from "../letter-grades/index.ts";
import { isPlaceOnly, labelOf } from "../label/index.ts";
import { findUnit } from "../unit-words/index.ts";

/** What a heading says of the column under it. */
export type HeadingRole =
  "when" | "label" | "place" | "value" | "unit" | "note" | "ignored" | "tick" | "at" | "spot";

export type Heading = {
  readonly role: HeadingRole;
  /** What a mark under it says. */
  readonly outcome?: Outcome;
  /** What a mark under it grades, by its own name. */
  readonly grade?: string;
};

const WORDS: readonly (readonly [role: HeadingRole, words: string])[] = [
  [
    "label",
    "item;items;check;checks;check item;check point;checkpoint;component;components;part;parts;area;area checked;description;point;inspection item;inspection point;system;section;section / check;section/check;panel;test;tests;subject;element;feature;task;question;items checked;item checked;item description;category;group;equipment;fluid;fluids;function;measured item;component / system;system / component",
  ],
  [
    "place",
    "place;position;pos;pos.;location;side;corner;where;wheel position;station;spot;cylinder;cyl;cyl.;cylinder no;cyl no",
  ],
  [
    "value",
    "result;results;fitted;fitted?;equipped;equipped?;installed;installed?;on car;on car?;has it;has it?;code;reading;readings;value;values;measured;measurement;measurements;actual;finding;findings;grade;rating;score;condition;cond;cond.;status;answer;ok?;y/n;yes/no;pass/fail;p/f;works?;works;working?;ok/nok;found;state;assessment;data;figure;ok y/n;mark;1-5;a-f;outcome;inspection;response;rag;r a g;r/a/g;rag status;rag rating;traffic light;check?;checked;observed;readout;level;looks;look;appearance;quality;amount;present",
  ],
  ["unit", "unit;units;uom;unit of measure"],
  [
    "note",
    "note;notes;comment;comments;remark;remarks;detail;details;observation;observations;action;explanation;further notes;inspector notes;inspector's notes;comments / action;notes / action;issue;issues found;what;memo;additional comments;what was seen;seen;what we found;what i found;what i saw;what was found;i found;description;in words;found on inspection;description of defect;defect description;faults found;further information;info;recommendation;recommendations;notes/comments;comments/notes;deviation;deviations;defect;defects;fault;faults;fault found;cause",
  ],
  [
    "ignored",
    "no;no.;nr;nr.;#;ref;id;brand;make;manufacturer;tire make;tyre make;date;when;price;cost;est;est.;est cost;estimate;photo;photos;pic;picture;avg;average;mean;total;limit;limits;spec;specification;spec.;standard;min spec;max spec;tolerance;initials;by;inspector;severity;priority;hours;labor;labour;allowed;nominal;weight;time;line;seq;min;max allowed;measure;remedy;cure;rectification;page;code no",
  ],
  [
    "spot",
    "inner;middle;outer;inside;outside;center;centre;inboard;outboard;1st;2nd;3rd;reading 1;reading 2;reading 3;reading 4;reading 5;spot 1;spot 2;spot 3;pull 1;pull 2;pull 3;test 1;test 2;test 3;r1;r2;r3;m1;m2;m3;#1;#2;#3;mid;in;out;first;second;third",
  ],
];

const GRADES = new Set(
  "poor;fair;good;excellent;very good;average;new;like new;as new;worn;bad;great;mint;a;b;c;d;e;f;good condition;serviceable".split(
    ";",
  ),
);

const byWord: ReadonlyMap<string, HeadingRole> = new Map(
  WORDS.flatMap(([role, words]) => words.split(";").map((word) => [word, role] as const)),
);

const plain = (text: string): string => folded(text).replace(/[:.]$/, "");

const TICKS: Readonly<Record<string, Outcome>> = {
  yes: { says: "yes" },
  y: { says: "yes" },
  no: { says: "no" },
  n: { says: "no" },
  "needs repair": { says: "bad" },
  "attention required": { says: "bad" },
  "requires attention": { says: "bad" },
  "immediate attention": { says: "bad" },
  "future attention": { says: "bad" },
  "checked and ok": { says: "good" },
  "checked ok": { says: "good" },
  "checked & ok": { says: "good" },
  works: { says: "good" },
  "does not work": { says: "bad" },
  "doesn't work": { says: "bad" },
};

/** What a mark in a column under this heading says; an outcome or a grade. */
const tickOf = (text: string): Heading | undefined => {
  const word = plain(text);
  if (GRADES.has(word)) {
    const outcome = outcomeOf(word);
    return { role: "tick", grade: text.trim(), ...(outcome === undefined ? {} : { outcome }) };
  }
  const outcome = TICKS[word] ?? outcomeOf(text);
  // Dark is a color of oil before it is a heading.
  return outcome === undefined || word === "dark" ? undefined : { role: "tick", outcome };
};

const isCylinder = (text: string): boolean =>
  /^\s*(?:cyl(?:inder)?\.?\s*(?:no\.?)?\s*#?|#|no\.?)\s*\d{1,2}\s*$/i.test(text);

/** A bare number counts spots or cylinders. */
export const isCount = (text: string): boolean => /^\s*\d{1,2}\s*$/.test(text);

/** `Yes | No`: beside the one the other heads a column of ticks, and no running numbers. */
const ANSWERS = new Set(["yes", "y", "ja"]);
const isNo = (text: string): boolean => /^(?:no|n)$/.test(plain(text));

/**
 * What the cells of a row say as headings, each by itself and beside the others.
 *
 * @example headingsOf(["Item", "Yes", "No"])[2]?.role // "tick"
 */
export const headingsOf = (texts: readonly string[]): (Heading | undefined)[] => {
  const isAsked = texts.some((text) => ANSWERS.has(plain(text)));
  const own = texts.map((text) =>
    isAsked && isNo(text) ? { role: "tick" as const, outcome: { says: "no" as const } } : headingOf(text),
  );
  return haveEnds(texts, own) ? own.map((one, at) => (isEnd(texts[at] ?? "") ? { role: "when" } : one)) : own;
};

/** Names of the two ends of what was read. */
export const LEAST = /^(?:low(?:est)?|min(?:imum)?)$/;
export const MOST = /^(?:high(?:est)?|max(?:imum)?|peak)$/;

/** A heading without its unit, as ends of a reading are named: `Low` of `Low (um)`. */
export const endOf = (text: string): string =>
  plain(text)
    .replace(/\s*[([].*[)\]]\s*$/, "")
    .replace(/\s+(?:reading|value)$/, "")
    .replace(/\.$/, "");

/**
 * The name of an end in one word, whatever people write: `Min. (um)` is `lowest (um)`.
 *
 * @example withEndNamed("Peak (um)") // "highest (um)"
 */
export const withEndNamed = (text: string): string =>
  isEnd(text) ? text.replace(/^\s*[a-z]+\.?/i, LEAST.test(endOf(text)) ? "lowest" : "highest") : text;

const isEnd = (text: string): boolean => LEAST.test(endOf(text)) || MOST.test(endOf(text));

/** `Panel | Lowest | Highest`: the two ends of what was read, where no other column holds a result; beside one they are its limits. */
const haveEnds = (texts: readonly string[], own: readonly (Heading | undefined)[]): boolean =>
  texts.some((text) => LEAST.test(endOf(text))) &&
  texts.some((text) => MOST.test(endOf(text))) &&
  !own.some((one, at) => one?.role === "value" && !isEnd(texts[at] ?? ""));

/** `Test point`, `Inspection object`: what heads a column of names, whatever stands before. */
const NAMES_LABEL =
  /^(?:test|check|checking|inspection|inspected|examination|assessment|survey|control|measuring|measured|vehicle|car) (?:points?|items?|parts?|components?|objects?|features?|elements?)$/;

/** When or how it was read: before a drive and after it, cold and hot. */
const WHEN =
  /^(?:cold|hot|warm|dry|wet|(?:before|after)(?: (?:the )?(?:road|road test|drive|test drive|run|test|warm[- ]?up))?)$/;

/** `Rating 1-4`, `Grade A-E`, `Score /10`. */
const SCALE = /\s+(?:\d\s*(?:-|–|to)\s*\d{1,2}|[a-f]\s*(?:-|–|to)\s*[a-f]|\/\s*\d{1,2}|out of \d{1,2})$/;

/** `Pass?`, `Passed (Y/N)`: what is asked of each row, and no side of the car. */
const ASKS_PASS =
  /^(?:(?:did|does) it )?pass(?:es|ed)?\s*(?:\?|\(?y\s*\/\s*n\)?|(?:or|\/)\s*fail)(?:\s*[?(].*)?$/;

/** `G/F/P`: the letters by which a column grades. */
const LETTER = `(?:${[...LETTER_GRADES.keys()].join("|")})`;
const LETTERS = new RegExp(`^\\(?${LETTER}(?:\\s*[/|]\\s*${LETTER}){2,4}\\)?$`);

/**
 * What a cell says as a heading; nothing where it is the name of something or a value.
 *
 * @example headingOf("Comments")?.role // "note"
 */
export const headingOf = (text: string): Heading | undefined => {
  const word = plain(text);
  if (isCylinder(text)) return { role: "at" };
  if (ASKS_PASS.test(word)) return { role: "value" };
  const tick = tickOf(text);
  if (tick !== undefined && !byWord.has(word)) return tick;
  if (WHEN.test(word)) return { role: "when" };
  const role =
    (LETTERS.test(word) ? ("value" as const) : undefined) ??
    byWord.get(word) ??
    byWord.get(word.replace(/\s*[([].*[)\]]\s*$/, "")) ??
    byWord.get(word.replace(SCALE, "")) ??
    (NAMES_LABEL.test(word) ? ("label" as const) : undefined);
  if (role !== undefined) return { role };
  if (tick !== undefined) return tick;
  if (text.trim().length > 1 && findUnit(text) !== undefined) return { role: "value" };
  const label = labelOf(text);
  return isPlaceOnly(label) || /^\s*spare\s*$/i.test(text) ? { role: "at" } : undefined;
};
