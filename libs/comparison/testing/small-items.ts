import type { AnswerOf } from "@evenhand/shared/answer";
import type { Drawing, FaultKind, Item, ReadingSpec } from "@evenhand/shared/sheet";
import type { Figures, ReadingFigures } from "@evenhand/shared/comparison";
import { frameOf } from "../src/fault-matches/index.ts";

/** A reading item by hand: base unit 1/32 in, δ 2, s₀ 0.3, ±0.3 ordinary gauge, ±2 by eye, at least 2 (a limit). */
export const treadSpec = (more: Partial<ReadingSpec> = {}): ReadingSpec => ({
  unit: "1/32in",
  alsoIn: ["mm"],
  delta: { absolute: 2, share: 0 },
  repeatability: { value: 0.3, share: 0, degreesOfFreedom: 30, over: "spots" },
  placement: 0,
  betterIs: "higher",
  plausible: [0, 20],
  ask: { readings: 1, spots: 3 },
  eyesRead: true,
  byEye: { absolute: 2, share: 0 },
  instrument: { name: "tread gauge", resolution: 0.1, accuracy: { absolute: 0.3, share: 0 } },
  limits: [{ side: "min", value: 2, severity: "danger", source: { kind: "regulation", text: "a limit" } }],
  alarms: [],
  spots: [],
  ...more,
});

export const gauge = { id: "gauge", name: "tread gauge" };

export const reading = (unit: AnswerOf<"reading">["unit"], ...values: number[]): AnswerOf<"reading"> => ({
  kind: "reading",
  unit,
  values: values.map((value) => ({ value })),
});

export const faultKind = (id: string, more: Partial<FaultKind> = {}): FaultKind => ({
  id,
  words: { american: id, synonyms: [] },
  unit: "mm",
  delta: { absolute: 25, share: 0.5 },
  byEye: { absolute: 5, share: 0.12 },
  family: id,
  rank: 0,
  severity: "repair",
  ...more,
});

/** Three by three cells, `1-1` at the upper left. */
export const grid: Drawing = {
  id: "grid",
  words: { american: "grid", synonyms: [] },
  cells: [1, 2, 3].flatMap((y) =>
    [1, 2, 3].map((x) => ({ id: `${x}-${y}`, words: { american: `${x} ${y}`, synonyms: [] }, x, y })),
  ),
};

const cells = new Map(grid.cells.map((cell) => [cell.id, cell]));

export const frame = frameOf({
  faultKinds: new Map(["dent", "corrosion", "crack"].map((id) => [id, faultKind(id)])),
  drawing: {
    drawing: grid,
    cellOrder: new Map(grid.cells.map(({ id }, order) => [id, order])),
    span: Math.hypot(2, 2),
    distance: (from, to) => {
      const [a, b] = [cells.get(from), cells.get(to)];
      return a === undefined || b === undefined ? undefined : Math.hypot(a.x - b.x, a.y - b.y);
    },
  },
});

type FaultsAnswer = AnswerOf<"faults">;

export const faults = (found: FaultsAnswer["found"], denied: FaultsAnswer["denied"] = []): FaultsAnswer => ({
  kind: "faults",
  found,
  denied,
});

/** The figures of a reading, where a test expects a reading. */
export const figuresOf = ({ figures }: { readonly figures?: Figures | undefined }): ReadingFigures => {
  if (figures?.of !== "reading") throw new Error("no figures of a reading");
  return figures;
};

/** An item by hand that asks for a reading. */
export const readingItem = (spec: ReadingSpec, more: Partial<Item> = {}): Item => ({
  id: "wheels.tread-depth",
  section: "wheels",
  words: { american: "tread depth", synonyms: [] },
  how: "Read it.",
  answer: "reading",
  consequence: "safety",
  severity: "danger",
  strict: true,
  time: "steady",
  stage: "lift",
  depth: "first-look",
  core: true,
  minutes: 1,
  needs: [],
  conditions: [],
  cautions: [],
  costRow: null,
  reading: spec,
  ...more,
});
