import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { VehicleForm } from "@evenhand/shared/report";
import { isBadCall } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import { HouseGrade } from "@evenhand/shared/sheet";
import type { FaultKind, FaultSeverity, Item, Limit, ReadingSpec } from "@evenhand/shared/sheet";
import { applicablePlaces } from "@evenhand/sheet/expand";
import type { Place } from "@evenhand/sheet/expand";
import { finding, sheet } from "./small-reports.ts";

/** A bad finding of one kind at one place, and how grave it is at least, read off the data of the sheet and not by `callOf`. */
export type Planted = {
  readonly what: string;
  readonly finding: Finding;
  readonly least: Severity;
  /** Other findings of the same report that the figure hangs on. */
  readonly beside: readonly Finding[];
};

type Bad = {
  readonly what: string;
  readonly answer: Answer;
  readonly least: Severity;
  readonly beside?: Finding;
};

/** How far past a figure: by what matters, and by a hair. */
const PAST = [1, 0.05];

const inForce = ({ systemVolts }: Limit, form: VehicleForm): boolean =>
  (systemVolts ?? form.systemVolts) === form.systemVolts;

/** The figure a drum carries, so that there is something to be past. */
const CAST_FIGURE = 9.06;

const readingsPast = (spec: ReadingSpec, position: string, form: VehicleForm): Bad[] => {
  const figures = [...spec.limits, ...spec.alarms].filter((limit) => inForce(limit, form));
  return figures.flatMap((limit) =>
    PAST.flatMap((share): Bad[] => {
      const figure = limit.isReadingOf === undefined ? limit.value : CAST_FIGURE;
      const away = share * Math.max(spec.delta.absolute, spec.delta.share * Math.abs(figure));
      const value = limit.side === "min" ? figure - away : figure + away;
      if (value < spec.plausible[0] || value > spec.plausible[1]) return [];
      const other = limit.isReadingOf;
      return [
        {
          what: `${value} past ${limit.side} ${figure} ${spec.unit}`,
          answer: { kind: "reading", unit: spec.unit, values: [{ value }] },
          least: limit.at?.[position] ?? limit.severity,
          ...(other === undefined
            ? {}
            : {
                beside: finding(
                  other.item,
                  { kind: "reading", unit: other.unit, values: [{ value: CAST_FIGURE }] },
                  { position },
                ),
              }),
        },
      ];
    }),
  );
};

const gradesDown = ({ badFrom, severity, spent }: NonNullable<Item["grade"]>): Bad[] => {
  const grades = HouseGrade.options;
  const bad = grades.slice(0, grades.findIndex((grade) => grade === badFrom) + 1);
  return bad.map((value, place) => ({
    what: value,
    answer: { kind: "grade", scale: "house", value },
    least: place === 0 ? (spent ?? severity) : severity,
  }));
};

const notWorking = (
  { severity, intermittent, at }: NonNullable<Item["working"]>,
  position: string,
): Bad[] => [
  { what: "does not work", answer: { kind: "working", value: "no" }, least: at?.[position] ?? severity },
  {
    what: "works at times",
    answer: { kind: "working", value: "intermittent" },
    least: at?.[position] ?? intermittent ?? severity,
  },
];

const wrongPresence = ({ goodIs, severity, onlyIfPromised }: NonNullable<Item["presence"]>): Bad[] => {
  if (goodIs === "neither" || onlyIfPromised === true) return [];
  const value = goodIs === "present" ? "absent" : "present";
  return [{ what: value, answer: { kind: "presence", value }, least: severity }];
};

/** Every bad option alone, and beside another one that can be true with it where several can. */
const badOptions = ({ options, several }: NonNullable<Item["choice"]>, position: string): Bad[] => {
  const others = options.slice(1).filter(({ id }) => id !== "not-known");
  return options.flatMap(({ id, call, at }) => {
    const said = at?.[position] ?? call;
    if (!isBadCall(said)) return [];
    const alone: Bad = { what: id, answer: { kind: "choice", option: id }, least: said };
    const beside = several === true ? others.find((other) => other.id !== id) : undefined;
    return beside === undefined
      ? [alone]
      : [
          alone,
          {
            what: `${beside.id} and ${id}`,
            answer: { kind: "choice", option: beside.id, also: [id] },
            least: said,
          },
        ];
  });
};

const severityOf = (
  kind: FaultKind,
  size: number | undefined,
  spot: string | undefined,
  rows: readonly FaultSeverity[],
  position: string,
): Severity => {
  const row = rows.find(
    ({ kinds, from, positions, spots }) =>
      kinds?.includes(kind.id) !== false &&
      positions?.includes(position) !== false &&
      (from === undefined || (size !== undefined && size >= from)) &&
      (spots === undefined || (spot !== undefined && spots.includes(spot))),
  );
  return row?.severity ?? kind.severity;
};

/** Every kind of fault: with no extent, a trifling one, and one past every step of severity; here and there on the drawing. */
const faultsOf = (item: Item, position: string): Bad[] => {
  const { kinds = [], severities = [] } = item.faults ?? {};
  const cells = sheet.items.get(item.id)?.drawing?.drawing.cells.map(({ id }) => id) ?? [];
  return kinds.flatMap((id) => {
    const kind = sheet.faultKinds.get(id);
    if (kind === undefined) throw new Error(`the sheet has no fault ${id}`);
    const sizes = [undefined, 1, ...severities.flatMap(({ from }) => (from === undefined ? [] : [from]))];
    return sizes.map((size, index): Bad => {
      const spot = cells[(index * 3 + id.length) % Math.max(1, cells.length)];
      const extent = size === undefined ? {} : { extent: { value: size, unit: kind.unit } };
      const fault = { kind: id, ...extent, ...(spot === undefined ? {} : { spot }) };
      return {
        what: `${id} of ${size ?? "unknown size"} at ${spot ?? "no spot"}`,
        answer: { kind: "faults", found: [fault], denied: [] },
        least: severityOf(kind, size, spot, severities, position),
      };
    });
  });
};

const badAt = ({ item, position }: Place, form: VehicleForm): Bad[] => {
  const { reading, grade, working, presence, choice } = item;
  if (item.answer === "reading" && reading !== undefined) return readingsPast(reading, position, form);
  if (item.answer === "grade" && grade !== undefined) return gradesDown(grade);
  if (item.answer === "working" && working !== undefined) return notWorking(working, position);
  if (item.answer === "presence" && presence !== undefined) return wrongPresence(presence);
  if (item.answer === "choice" && choice !== undefined) return badOptions(choice, position);
  return item.answer === "faults" ? faultsOf(item, position) : [];
};

/** Every bad finding there is of every kind at every place of a car. Colors and codes are bad by rules alone. */
export const everythingBad = (form: VehicleForm): Planted[] =>
  applicablePlaces(sheet.sheet, form)
    .filter(({ item }) => item.circumstance !== true && item.asked !== "statement")
    .flatMap((place) =>
      badAt(place, form).map(({ what, answer, least, beside }) => ({
        what: `${place.item.id} ${place.position}: ${what}`,
        finding: finding(place.item.id, answer, { position: place.position }),
        least,
        beside: beside === undefined ? [] : [beside],
      })),
    );
