import { isBadCall } from "@evenhand/shared/severity";
import type { Call } from "@evenhand/shared/severity";
import type { Drawing, FaultKind, Item, PositionSet, Sheet } from "@evenhand/shared/sheet";
import { oneShape } from "../one-shape/index.ts";

type OptionCall = { readonly rank: number; readonly call: Call; readonly bad: boolean };

/** A sheet by id, for work over thousands of findings. */
export type CompiledSheet = {
  readonly sheet: Sheet;
  readonly items: ReadonlyMap<string, CompiledItem>;
  readonly faultKinds: ReadonlyMap<string, FaultKind>;
  readonly drawings: ReadonlyMap<string, CompiledDrawing>;
};

export type CompiledItem = {
  /** The sheet's item, with all the fields that any item has, so that lines are compared fast. */
  readonly item: Item;
  /** Place of the item in the sheet, from 0. */
  readonly order: number;
  readonly positionSet: PositionSet | undefined;
  /** Place of a position in walking order, from 0; `undefined` for one the item does not have. */
  readonly positionOrder: (position: string) => number | undefined;
  /** Options of a choice by id: place from the most claimed (0), and whether bad. Empty for other kinds. */
  readonly options: ReadonlyMap<string, OptionCall>;
  /** Fault kinds the item asks for, by id, in sheet order. Empty for other kinds. */
  readonly faultKinds: ReadonlyMap<string, FaultKind>;
  readonly drawing: CompiledDrawing | undefined;
};

export type CompiledDrawing = {
  readonly drawing: Drawing;
  readonly cellOrder: ReadonlyMap<string, number>;
  /** The greatest distance between two cells. */
  readonly span: number;
  /** Distance between two cells in steps of the grid; `undefined` where one is not on it. */
  readonly distance: (from: string, to: string) => number | undefined;
};

const compiled = new WeakMap<Sheet, CompiledSheet>();

function byId<T extends { id: string }>(list: readonly T[]): Map<string, T> {
  return new Map(list.map((entry) => [entry.id, entry]));
}

type Point = { readonly x: number; readonly y: number };

const between = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

function compileDrawing(drawing: Drawing): CompiledDrawing {
  const cells = byId(drawing.cells);
  return {
    drawing,
    cellOrder: new Map(drawing.cells.map(({ id }, order) => [id, order])),
    span: Math.max(...drawing.cells.flatMap((a) => drawing.cells.map((b) => between(a, b)))),
    distance: (from, to) => {
      const a = cells.get(from);
      const b = cells.get(to);
      return a === undefined || b === undefined ? undefined : between(a, b);
    },
  };
}

function positionOrderOf(set: PositionSet | undefined): CompiledItem["positionOrder"] {
  if (set === undefined) return (position) => (position === "" ? 0 : undefined);
  const listed = new Map(set.positions.map(({ id }, order) => [id, order]));
  const prefix = set.numbered === undefined ? undefined : `${set.numbered.prefix}-`;
  return (position) => {
    const order = listed.get(position);
    if (order !== undefined || prefix === undefined || !position.startsWith(prefix)) return order;
    const digits = position.slice(prefix.length);
    return /^[1-9]\d{0,3}$/.test(digits) ? listed.size + Number(digits) - 1 : undefined;
  };
}

const present = <Part>(parts: readonly (Part | undefined)[]): Part[] =>
  parts.filter((part) => part !== undefined);

/** A copier of the particulars of one kind; items of other kinds go on having none. */
const particulars = <Part extends object>(parts: readonly (Part | undefined)[]) => {
  const shape = oneShape(present(parts));
  return (part: Part | undefined): Part | undefined => (part === undefined ? undefined : shape(part));
};

/** The items of a sheet in one shape, and their particulars, limits and options in one each. */
function inOneShape(items: readonly Item[]): Item[] {
  const readings = present(items.map(({ reading }) => reading));
  const limit = oneShape(readings.flatMap(({ limits, alarms }) => [...limits, ...alarms]));
  const option = oneShape(items.flatMap(({ choice }) => choice?.options ?? []));
  const reading = oneShape(readings);
  const choice = oneShape(present(items.map((item) => item.choice)));
  const faults = particulars(items.map((item) => item.faults));
  const grade = particulars(items.map((item) => item.grade));
  const working = particulars(items.map((item) => item.working));
  const presence = particulars(items.map((item) => item.presence));
  const code = particulars(items.map((item) => item.code));
  const color = particulars(items.map((item) => item.color));
  const whole = items.map((item): Item => ({
    ...item,
    reading: item.reading && {
      ...reading(item.reading),
      limits: item.reading.limits.map(limit),
      alarms: item.reading.alarms.map(limit),
    },
    choice: item.choice && { ...choice(item.choice), options: item.choice.options.map(option) },
    faults: faults(item.faults),
    grade: grade(item.grade),
    working: working(item.working),
    presence: presence(item.presence),
    code: code(item.code),
    color: color(item.color),
  }));
  return whole.map(oneShape(whole));
}

function compile(sheet: Sheet): CompiledSheet {
  const sets = byId(sheet.positionSets);
  const faultKinds = byId(sheet.faultKinds);
  const drawings = new Map(sheet.drawings.map((drawing) => [drawing.id, compileDrawing(drawing)]));
  const compileItem = (item: Item, order: number): CompiledItem => {
    const positionSet = item.positions === undefined ? undefined : sets.get(item.positions);
    const asked = new Set(item.faults?.kinds);
    return {
      item,
      order,
      positionSet,
      positionOrder: positionOrderOf(positionSet),
      options: new Map(
        item.choice?.options.map(({ id, call }, rank) => [id, { rank, call, bad: isBadCall(call) }]),
      ),
      faultKinds: byId(sheet.faultKinds.filter(({ id }) => asked.has(id))),
      drawing: item.faults?.drawing === undefined ? undefined : drawings.get(item.faults.drawing),
    };
  };
  return {
    sheet,
    items: new Map(inOneShape(sheet.items).map((item, order) => [item.id, compileItem(item, order)])),
    faultKinds,
    drawings,
  };
}

/**
 * A sheet's items, fault kinds and drawings by id, with their orders and distances. Made once for each sheet object, which must
 * not change afterwards (version 1 is frozen).
 *
 * @example
 * compileSheet(sheetVersion1).items.get("body.faults")?.drawing?.distance("upper-front", "upper-rear"); // 2
 */
export function compileSheet(sheet: Sheet): CompiledSheet {
  const known = compiled.get(sheet);
  if (known !== undefined) return known;
  const made = compile(sheet);
  compiled.set(sheet, made);
  return made;
}
