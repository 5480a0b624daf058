import * as fc from "fast-check";
import type { Answer, AnswerOf } from "@evenhand/shared/answer";
import { NotSeenReason } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { GradeScale, Instrument, Report, VehicleForm } from "@evenhand/shared/report";
import { HouseGrade } from "@evenhand/shared/sheet";
import type { CodeSystem, Item, ReadingSpec } from "@evenhand/shared/sheet";
import { convert } from "@evenhand/measurement/unit";
import { applicablePlaces } from "@evenhand/sheet/expand";
import type { Place } from "@evenhand/sheet/expand";
import { form, inspection, sheet, statement } from "./small-reports.ts";

/** Reports over the real sheet that `checkReport` accepts, for property tests. */

const scales: GradeScale[] = [
  {
    id: "percent",
    name: "Per cent",
    step: 5,
    grades: [
      { id: "low", name: "low" },
      { id: "high", name: "high" },
    ],
  },
  {
    id: "stars",
    name: "Stars",
    grades: [
      { id: "one", name: "one star" },
      { id: "two", name: "two stars" },
      { id: "three", name: "three stars" },
    ],
  },
];

const instruments: Instrument[] = [
  { id: "ordinary", name: "an ordinary instrument" },
  { id: "shared", name: "an instrument known by its share", accuracy: { share: 0.02 } },
];
const persons = [
  { id: "ann", name: "Ann Teller" },
  { id: "bo", name: "Bo Larch" },
];

const clamp = (value: number, [low, high]: readonly [number, number]): number =>
  Math.min(high, Math.max(low, value));

/** Around what an ordinary sound car gives, in quarters of δ, a little scattered, in any unit offered. */
export const arbitraryReading = (spec: ReadingSpec): fc.Arbitrary<AnswerOf<"reading">> => {
  const typical = spec.typical ?? (spec.plausible[0] + spec.plausible[1]) / 2;
  const delta = Math.max(spec.delta.absolute, spec.delta.share * Math.abs(typical));
  const scatter = Math.max(spec.repeatability.value, delta / 20);
  const spots = spec.spots.map(({ id }) => id);
  return fc
    .record({
      unit: fc.constantFrom(spec.unit, ...spec.alsoIn),
      quarters: fc.integer({ min: -16, max: 16 }),
      steps: fc.array(fc.integer({ min: -4, max: 4 }), { minLength: 1, maxLength: 4 }),
      spot: fc.option(fc.constantFrom("here", ...spots), { nil: undefined }),
    })
    .map(({ unit, quarters, steps, spot }) => ({
      kind: "reading",
      unit,
      values: steps.map((step, index) => {
        const value = clamp(typical + (quarters * delta) / 4 + (step * scatter) / 4, spec.plausible);
        const named = spots.length > 0 ? spots[index % spots.length] : spot;
        return { value: clampIn(value, spec, unit), spot: spot === undefined ? undefined : named };
      }),
    }));
};

/** The rounding of a conversion must not carry a value out of what is plausible. */
const clampIn = (value: number, spec: ReadingSpec, unit: ReadingSpec["unit"]): number => {
  const converted = convert(value, spec.unit, unit);
  const back = convert(converted, unit, spec.unit);
  return back >= spec.plausible[0] && back <= spec.plausible[1]
    ? converted
    : convert((value + (spec.plausible[0] + spec.plausible[1]) / 2) / 2, spec.unit, unit);
};

const arbitraryColor: fc.Arbitrary<AnswerOf<"color">> = fc.record({
  kind: fc.constant("color" as const),
  geometry: fc.constantFrom("45/0" as const, "d/8" as const, "multi-angle" as const),
  metallic: fc.boolean(),
  values: fc.array(
    fc.record({
      L: fc.integer({ min: 38, max: 44 }),
      a: fc.integer({ min: 8, max: 11 }),
      b: fc.constant(-20),
    }),
    { minLength: 1, maxLength: 3 },
  ),
});

const arbitraryGrade: fc.Arbitrary<AnswerOf<"grade">> = fc.oneof(
  fc.constantFrom(...HouseGrade.options).map((value) => ({ kind: "grade" as const, scale: "house", value })),
  fc
    .integer({ min: 0, max: 20 })
    .map((fives) => ({ kind: "grade" as const, scale: "percent", value: fives * 5 })),
  fc.constantFrom("one", "two", "three").map((value) => ({ kind: "grade" as const, scale: "stars", value })),
);

const NUMBERS = ["7206315", "7260315", "72 06315", "7206315 B", "N4417", "M2"];
/** Codes as people write them, by what they are. */
const CODES: Partial<Record<CodeSystem, readonly string[]>> = {
  vin: [
    "0EVTL82633A007146",
    "0EVTL8Z633A007146",
    "0evtl82633a0O7146",
    "0EVTL28633A007146",
    "AM58-10442",
    "AM58-10443",
  ],
  "tire-size": ["205/75R15", "P205/75 R15 97S", "6.70-15", "195/60 R 14", "G78-15"],
  "tire-identification": ["U2LL LMLR 1208", "U2LL LMLR 2325", "1208", "U2LL LMLR 129"],
  "date-code": ["1958-03-14", "Mar 14 1958", "3/14/1958", "March 1958", "C148", "1957-11-02"],
};

const arbitraryFaults = (item: Item): fc.Arbitrary<AnswerOf<"faults">> => {
  const kinds = (item.faults?.kinds ?? []).slice(0, 3);
  const cells = sheet.items.get(item.id)?.drawing?.drawing.cells.map(({ id }) => id) ?? [];
  const spot =
    cells.length === 0 ? fc.constant(undefined) : fc.option(fc.constantFrom(...cells), { nil: undefined });
  const extent = fc.option(
    fc.oneof(
      fc.integer({ min: 1, max: 300 }).map((value) => ({ value, unit: "mm" as const })),
      fc.integer({ min: 1, max: 12 }).map((value) => ({ value, unit: "in" as const })),
    ),
    { nil: undefined },
  );
  const found = fc.array(fc.record({ kind: fc.constantFrom(...kinds), spot, extent }), { maxLength: 3 });
  return fc.tuple(found, fc.subarray(kinds), fc.boolean()).map(([faults, deniable, all]) => {
    const denied = deniable.filter((kind) => faults.every((fault) => fault.kind !== kind));
    const none = faults.length === 0 && (all || denied.length === 0);
    return { kind: "faults", found: faults, denied: none ? "all" : denied };
  });
};

/** One option, or two where two can be true. */
const arbitraryChoice = ({ choice }: Item): fc.Arbitrary<AnswerOf<"choice">> => {
  const known = (choice?.options ?? []).map(({ id }) => id);
  const one = fc.constantFrom(...known).map((option) => ({ kind: "choice" as const, option }));
  if (choice?.several !== true) return one;
  const together = known.slice(1).filter((id) => id !== "not-known");
  const two = fc
    .uniqueArray(fc.constantFrom(...together), { minLength: 2, maxLength: 2 })
    .map(([option = "", ...also]) => ({ kind: "choice" as const, option, also }));
  return fc.oneof(one, two);
};

/** An answer to an item: of its own kind, not seen, or not fitted. */
export const arbitraryAnswer = (item: Item): fc.Arbitrary<Answer> => {
  const own = (): fc.Arbitrary<Answer> => {
    switch (item.answer) {
      case "reading":
        if (item.reading === undefined) throw new Error(`${item.id} has no particulars`);
        return arbitraryReading(item.reading);
      case "color":
        return arbitraryColor;
      case "grade":
        return arbitraryGrade;
      case "working":
        return fc
          .constantFrom("yes", "no", "intermittent", "not-known")
          .map((value) => ({ kind: "working", value }));
      case "presence":
        return fc
          .constantFrom("present", "absent", "not-known")
          .map((value) => ({ kind: "presence", value }));
      case "choice":
        return arbitraryChoice(item);
      case "code":
        return fc
          .constantFrom(...(CODES[item.code?.system ?? "text"] ?? NUMBERS))
          .map((text) => ({ kind: "code", text }));
      case "faults":
        return arbitraryFaults(item);
    }
  };
  const notSeen = fc
    .constantFrom(...NotSeenReason.options)
    .map((reason) => ({ kind: "not-seen" as const, reason }));
  const notFitted = fc.constant({ kind: "not-fitted" as const });
  return fc.oneof(
    { weight: 18, arbitrary: own() },
    { weight: 2, arbitrary: notSeen },
    { weight: item.equipment === true ? 1 : 0, arbitrary: notFitted },
  );
};

const arbitraryFinding = ({ item, position }: Place): fc.Arbitrary<Finding> =>
  fc.record({
    item: fc.constant(item.id),
    position: fc.constant(position),
    answer: arbitraryAnswer(item),
    firmness: fc.constantFrom("asserted" as const, "hedged" as const, "second-hand" as const),
    basis: fc.constant("seen" as const),
    instrument:
      item.answer === "reading" ? fc.constantFrom(undefined, "ordinary", "shared") : fc.constant(undefined),
    person: fc.constantFrom(undefined, "ann", "bo"),
    blind: fc.boolean(),
  });

const forms: VehicleForm[] = [
  form,
  {
    ...form,
    body: "convertible",
    cylinders: 6,
    gearbox: "automatic",
    brakes: { front: "drum", rear: "drum" },
  },
];
const places = new Map(forms.map((one) => [one, applicablePlaces(sheet.sheet, one)]));
/** Each kind of answer as likely as any other, however many items ask for it. */
const byKind = new Map(
  forms.map((one) => {
    const all = places.get(one) ?? [];
    const kinds = Array.from(new Set(all.map(({ item }) => item.answer)));
    return [one, kinds.map((kind) => all.filter(({ item }) => item.answer === kind))];
  }),
);

type Answered = { readonly a: Finding | undefined; readonly b: Finding | undefined };

const arbitraryPlace = (one: VehicleForm): fc.Arbitrary<Place> =>
  fc.oneof(...(byKind.get(one) ?? []).map((ofKind) => fc.constantFrom(...ofKind)));

const arbitraryAnswered = (place: Place): fc.Arbitrary<Answered> =>
  fc.record({
    a: fc.option(arbitraryFinding(place), { nil: undefined, freq: 5 }),
    b: fc.option(arbitraryFinding(place), { nil: undefined, freq: 5 }),
  });

const header = (vehicleForm: VehicleForm): Partial<Report> => ({
  instruments,
  persons,
  scales,
  vehicle: { ...statement([]).vehicle, modelYear: 1985, form: vehicleForm },
});

const defined = (findings: readonly (Finding | undefined)[]): Finding[] =>
  findings.filter((one) => one !== undefined);

/** A statement and an inspection of one car: a few places answered by one side or both, the rest by neither. */
export const arbitraryReports = (most = 12): fc.Arbitrary<{ a: Report; b: Report }> =>
  fc.constantFrom(...forms).chain((one) =>
    fc
      .uniqueArray(arbitraryPlace(one), {
        maxLength: most,
        selector: ({ item, position }) => `${item.id} ${position}`,
      })
      .chain((chosen) => fc.tuple(...chosen.map(arbitraryAnswered)))
      .map((answered) => ({
        a: statement(defined(answered.map(({ a }) => a)), header(one)),
        b: inspection(defined(answered.map(({ b }) => b)), header(one)),
      })),
  );
