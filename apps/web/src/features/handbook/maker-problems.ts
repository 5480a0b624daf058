import { firmHandbookProblems } from "@evenhand/handbook/firm-handbook";
import { chassisPatternWrong, dateFormWrong, stampWrong } from "./code-forms";
import {
  figureFields,
  makerOf,
  neighborsTyped,
  ratiosTyped,
  type DateFormTyped,
  type FigureField,
  type MakerTyped,
  type TextField,
} from "./maker-form";
import { numberTyped } from "./typed-number";

export type MakerReason =
  | "missing"
  | "too-long"
  | "not-a-number"
  | "not-positive"
  | "over-one"
  | "not-a-year"
  | "years-turned-round"
  | "twice"
  | "ratios"
  | "too-many-ratios"
  | "neighbors"
  | "part-twice"
  | NonNullable<
      | ReturnType<typeof chassisPatternWrong>
      | ReturnType<typeof stampWrong>
      | ReturnType<typeof dateFormWrong>
    >;

/** By field, or by date form and part of it; `figures` where the entry gives no figure at all. */
export type MakerProblems = ReadonlyMap<string, MakerReason | "no-figure">;

type Reason = MakerReason | undefined;
type Found = readonly [string, Reason];

export const dateFormField = (key: string, field: keyof Omit<DateFormTyped, "key">): string =>
  `${key}/${field}`;

/** As `MakerEntry` in the contract has them. */
const LONGEST = { make: 100, model: 100, source: 400, chassisPattern: 80, stampEngine: 80, stampGearbox: 80 };
const LONGEST_DATE_FORM = 40;
const MOST_RATIOS = 40;

const isYear = (text: string): boolean => {
  const year = numberTyped(text);
  return Number.isInteger(year) && year >= 1886 && year <= 2100;
};
const empty = (text: string): boolean => text.trim() === "";
const yearWrong = (text: string, needed = false): Reason =>
  empty(text) ? (needed ? "missing" : undefined) : isYear(text) ? undefined : "not-a-year";

const lengthWrong = (text: string, longest: number, needed = false): Reason =>
  empty(text) ? (needed ? "missing" : undefined) : text.trim().length > longest ? "too-long" : undefined;

const turned = (from: string, to: string): boolean =>
  isYear(from) && isYear(to) && numberTyped(to) < numberTyped(from);

const SIGNED: readonly FigureField[] = ["timing", "toeFront", "toeRear"];
const figureWrong = (field: FigureField, text: string): Reason => {
  if (empty(text)) return undefined;
  const value = numberTyped(text);
  if (Number.isNaN(value)) return "not-a-number";
  if (!SIGNED.includes(field) && value <= 0) return "not-positive";
  return field === "compressionLowestShare" && value > 1 ? "over-one" : undefined;
};

const ratiosWrong = (text: string): Reason => {
  const ratios = ratiosTyped(text);
  if (ratios.some((ratio) => Number.isNaN(ratio) || ratio <= 0)) return "ratios";
  return ratios.length > MOST_RATIOS ? "too-many-ratios" : undefined;
};

const textWrong = (text: MakerTyped["text"]): readonly (readonly [TextField, Reason])[] => [
  ["make", lengthWrong(text.make, LONGEST.make, true)],
  ["model", lengthWrong(text.model, LONGEST.model)],
  ["fromYear", yearWrong(text.fromYear)],
  [
    "toYear",
    yearWrong(text.toYear) ?? (turned(text.fromYear, text.toYear) ? "years-turned-round" : undefined),
  ],
  ["source", lengthWrong(text.source, LONGEST.source, true)],
  ["axleRatios", ratiosWrong(text.axleRatios)],
  ["cylinderNeighbors", neighborsTyped(text.cylinderNeighbors) === null ? "neighbors" : undefined],
  [
    "chassisPattern",
    lengthWrong(text.chassisPattern, LONGEST.chassisPattern) ?? chassisPatternWrong(text.chassisPattern),
  ],
  ["stampEngine", lengthWrong(text.stampEngine, LONGEST.stampEngine) ?? stampWrong(text.stampEngine)],
  ["stampGearbox", lengthWrong(text.stampGearbox, LONGEST.stampGearbox) ?? stampWrong(text.stampGearbox)],
  ...figureFields.map((field) => [field, figureWrong(field, text[field])] as const),
];

const dateWrong = (row: DateFormTyped, before: readonly DateFormTyped[]): readonly Found[] => [
  [
    dateFormField(row.key, "part"),
    row.part === "" ? "missing" : before.some(({ part }) => part === row.part) ? "part-twice" : undefined,
  ],
  [dateFormField(row.key, "form"), lengthWrong(row.form, LONGEST_DATE_FORM, true) ?? dateFormWrong(row.form)],
  [dateFormField(row.key, "from"), yearWrong(row.from, true)],
  [
    dateFormField(row.key, "to"),
    yearWrong(row.to, true) ?? (turned(row.from, row.to) ? "years-turned-round" : undefined),
  ],
];

/** Everything that keeps one entry from being taken, the others aside. */
export const makerProblems = (typed: MakerTyped): MakerProblems => {
  const found: readonly Found[] = [
    ...textWrong(typed.text),
    ...typed.dateForms.flatMap((row, at) => dateWrong(row, typed.dateForms.slice(0, at))),
  ];
  const problems = new Map<string, MakerReason | "no-figure">();
  for (const [field, reason] of found) if (reason !== undefined) problems.set(field, reason);
  if (Object.values(makerOf(typed).data).every((value) => value === undefined))
    problems.set("figures", "no-figure");
  return problems;
};

/** By entry: its own problems, and whether an entry before it is for the same cars. Entries to be taken out have none. */
export const problemsOfMakers = (makers: readonly MakerTyped[]): ReadonlyMap<string, MakerProblems> => {
  const kept = makers.filter(({ removed }) => !removed);
  const twice = new Set(
    firmHandbookProblems({ limits: {}, makers: kept.map(makerOf) })
      .filter(({ reason }) => reason === "twice")
      .map(({ at }) => kept[Number(at.split("/")[2])]?.key),
  );
  const all = kept.map((typed) => {
    const problems = new Map(makerProblems(typed));
    if (twice.has(typed.key) && !problems.has("make")) problems.set("make", "twice");
    return [typed.key, problems] as const;
  });
  return new Map(all.filter(([, problems]) => problems.size > 0));
};
