import { z } from "zod";
import { ReportHandbook } from "./cross-check.ts";
import { SealedEvidence } from "./evidence.ts";
import { Finding } from "./finding.ts";
import { Instant, LocalDate, LocalId } from "./identifier.ts";
import { nameOf } from "./names.ts";
import { Stage, STAGES } from "./sheet.ts";
import { UnitSymbol } from "./unit.ts";
import { Zone } from "./zone.ts";

/** A quantity with its unit, outside findings. */
export const Quantity = z.strictObject({ value: z.number(), unit: UnitSymbol });
export type Quantity = z.infer<typeof Quantity>;

/** Accuracy ±(absolute + share × reading). Resolution is the smallest step shown. */
export const Instrument = z.strictObject({
  id: LocalId,
  name: nameOf(200),
  resolution: Quantity.optional(),
  accuracy: z
    .strictObject({ absolute: Quantity.optional(), share: z.number().min(0).max(1).default(0) })
    .optional(),
  calibrated: LocalDate.optional(),
  /** What the sheet calls an instrument of this kind, where whoever entered it said so. */
  kind: nameOf(200).optional(),
});
export type Instrument = z.infer<typeof Instrument>;

/** Nobody may widen or shift a word of their own scale so that it agrees with what was found. */
const NO_STRETCH =
  "scales are mapped by the service: leave the stretch out, and order the grades from worst to best; each covers an equal share";

/** A grading scale of the report's own: grades from worst to best, mapped by rank, each covering an equal share of 0–1. */
export const GradeScale = z.strictObject({
  id: LocalId,
  name: z.string().min(1).max(200),
  grades: z
    .array(
      z.strictObject({
        id: LocalId,
        name: z.string().min(1).max(200),
        stretch: z.never({ error: NO_STRETCH }).optional(),
      }),
    )
    .min(2)
    .max(100),
  /** Only on the scale `percent`: the step it is given in, in per cent; however wide, a percentage covers no more than another. */
  step: z.number().positive().max(100).optional(),
});
export type GradeScale = z.infer<typeof GradeScale>;

/** What of the car decides which items and positions apply. */
export const VehicleForm = z.strictObject({
  body: z.enum(["coupe", "sedan", "convertible", "wagon", "pickup", "van", "roadster"]),
  doors: z.int().min(2).max(5),
  cylinders: z.int().min(1).max(16),
  construction: z.enum(["body-on-frame", "unit-body"]),
  gearbox: z.enum(["manual", "automatic"]),
  driven: z.enum(["rear", "front", "all"]),
  fuelSystem: z.enum(["carburetor", "injection"]),
  systemVolts: z.union([z.literal(6), z.literal(12)]),
  brakes: z.strictObject({ front: z.enum(["drum", "disc"]), rear: z.enum(["drum", "disc"]) }),
  leftHandDrive: z.boolean().default(true),
  /** What a car of this form has or lacks; where nothing is said, it is asked. */
  servo: z.boolean().optional(),
  frontPivots: z.enum(["ball-joints", "king-pins", "struts"]).optional(),
  torqueBoxes: z.boolean().optional(),
  seatBelts: z.boolean().optional(),
  airConditioning: z.boolean().optional(),
  powerTop: z.boolean().optional(),
  repeaters: z.boolean().optional(),
  ventWindows: z.boolean().optional(),
  headlamps: z.enum(["sealed-beam", "replaceable-bulb"]).optional(),
});
export type VehicleForm = z.infer<typeof VehicleForm>;

export const Vehicle = z.strictObject({
  make: nameOf(100),
  model: nameOf(100),
  modelYear: z.int().min(1886).max(2100),
  identification: nameOf(40),
  market: nameOf(60).optional(),
  form: VehicleForm,
});
export type Vehicle = z.infer<typeof Vehicle>;

/** The cautions at the gate of a stage, and when whoever did the visit said that they had read them. */
export const CautionsRead = z.strictObject({ stage: Stage, time: Instant });
export type CautionsRead = z.infer<typeof CautionsRead>;

export const ReportKind = z.enum(["acquisition", "statement", "inspection", "collection", "delivery"]);
export type ReportKind = z.infer<typeof ReportKind>;

/** A report as a file: plain JSON, our own format. `libs/sheet` checks it against the sheet it names. */
export const Report = z.strictObject({
  format: z.literal("evenhand-report"),
  version: z.literal(1),
  kind: ReportKind,
  sheet: z.strictObject({ id: LocalId, version: z.int().positive() }),
  vehicle: Vehicle,
  author: z.strictObject({
    organization: nameOf(200),
    role: z.enum(["dealer", "inspector", "carrier"]),
  }),
  visit: z.strictObject({ started: Instant, ended: Instant.optional(), zone: Zone }),
  /** Scope, who may rely on it, the firm's terms and insurance reference, in the author's words. */
  terms: z.string().max(4000).optional(),
  instruments: z.array(Instrument).max(100).default([]),
  persons: z
    .array(z.strictObject({ id: LocalId, name: nameOf(200) }))
    .max(50)
    .default([]),
  scales: z.array(GradeScale).max(20).default([]),
  /** Each stage once. */
  cautionsRead: z.array(CautionsRead).max(STAGES.length).optional(),
  /** The firm's own figures for the handbook's rules, as they were when the report was sealed. */
  handbook: ReportHandbook.optional(),
  findings: z.array(Finding).max(200_000),
  /** Every photograph and paper the report rests on, by place and hash; written by the service when it is sealed. */
  evidence: z.array(SealedEvidence).max(1_000).optional(),
});
export type Report = z.infer<typeof Report>;
export type ReportInput = z.input<typeof Report>;
