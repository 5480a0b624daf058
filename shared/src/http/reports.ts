import { z } from "zod";
import { SealReceipt } from "../chain.ts";
import { BriefItem } from "../booking.ts";
import { FirmHandbook } from "../cross-check.ts";
import { Finding } from "../finding.ts";
import { Instant, ItemId, ObjectId, PositionId, Sha256 } from "../identifier.ts";
import { FieldProblem } from "../problem.ts";
import { Report, ReportKind } from "../report.ts";
import { CreatedDraft, Named, Revision, type Contract } from "./paging.ts";

/** What is stored of a report beside its findings: the parts its author writes, and the sheet it is on. */
export const StoredHeader = Report.pick({
  sheet: true,
  visit: true,
  terms: true,
  instruments: true,
  persons: true,
  scales: true,
  cautionsRead: true,
});
export type StoredHeader = z.infer<typeof StoredHeader>;

const { visit, terms, instruments, persons, scales, cautionsRead } = StoredHeader.shape;

/** Everything of a report that is not a finding: the stored shape itself, with what may be left out left out. */
export const ReportHeader = z.strictObject({
  visit,
  terms,
  // A default would empty what a change leaves out.
  instruments: instruments.removeDefault().optional(),
  persons: persons.removeDefault().optional(),
  scales: scales.removeDefault().optional(),
  cautionsRead,
});
export type ReportHeader = z.infer<typeof ReportHeader>;

/** Where `instruments` are left out, the report begins with those the firm keeps in use. */
export const StatementRequest = ReportHeader.extend({
  kind: z.enum(["statement", "acquisition"]).default("statement"),
});
export type StatementRequest = z.infer<typeof StatementRequest>;
export const InspectionRequest = ReportHeader;
export type InspectionRequest = z.infer<typeof InspectionRequest>;
/** What is named is replaced; what is left out stays. `terms: null` removes them. */
export const ReportChange = ReportHeader.extend({
  terms: terms.nullable(),
}).partial();
export type ReportChange = z.infer<typeof ReportChange>;

const Place = z.strictObject({ item: ItemId, position: PositionId });
export const FindingRevision = Place.extend({ revision: Revision });

/** Where an inspector is asked to look again before sealing: some of these part from the statement, and some do not. */
export const SecondLook = z.strictObject({ askedAt: Instant, places: z.array(Place) });
export type SecondLook = z.infer<typeof SecondLook>;

/** The report as it stands. `report.findings` and `findings` run in the same order. */
export const ReportDraft = z.strictObject({
  id: ObjectId,
  revision: Revision,
  vehicle: ObjectId,
  order: ObjectId.nullable(),
  /** The appointment the inspection was ordered with; `null` for a statement, and for an order without an hour. */
  visit: ObjectId.nullable(),
  /** What that appointment's brief asks, as buyer and inspector agreed; `null` where there is no appointment. */
  brief: z.array(BriefItem).nullable(),
  /** `false` between sealing and the next version: nothing can be changed. */
  drafting: z.boolean(),
  /** Asked for once, before the first version of an inspection is sealed. */
  secondLook: SecondLook.nullish(),
  report: Report,
  /** The firm's own handbook as it stands; what of it speaks of this car is sealed with the report. */
  handbook: FirmHandbook,
  findings: z.array(FindingRevision),
  /** Sealed versions, newest first. */
  versions: z.array(
    z.strictObject({ id: ObjectId, version: z.int().positive(), seal: Sha256, sealedAt: Instant }),
  ),
});
export type ReportDraft = z.infer<typeof ReportDraft>;

/**
 * One change of one finding. `id` is made by whoever makes the change and is done at most once, ever, so that a device may send
 * again what it does not know to have arrived. `base` is the revision of that finding it last saw, `null` for none.
 */
export const SetFinding = z.strictObject({
  id: ObjectId,
  op: z.literal("set"),
  finding: Finding,
  base: z.int().nonnegative().nullable(),
});
export const RemoveFinding = z.strictObject({
  id: ObjectId,
  op: z.literal("remove"),
  item: ItemId,
  position: PositionId.default(""),
  base: z.int().nonnegative(),
});
export const Operation = z.discriminatedUnion("op", [SetFinding, RemoveFinding]);
export type Operation = z.infer<typeof Operation>;

/** A finding that does not hold refuses its own operation only, so the body takes it as it comes. */
export const OperationsRequest = z.strictObject({
  operations: z
    .array(
      z.discriminatedUnion("op", [
        SetFinding.extend({ finding: z.union([Finding, z.record(z.string(), z.unknown())]) }),
        RemoveFinding,
      ]),
    )
    .min(1)
    .max(500),
});
export type OperationsRequest = z.infer<typeof OperationsRequest>;

export const OperationResult = z.discriminatedUnion("result", [
  /** Done now. `revision` is the finding's. */
  z.strictObject({
    id: ObjectId,
    result: z.literal("applied"),
    revision: Revision,
    blind: z.boolean().optional(),
  }),
  /** Done before; `revision` is what it gave then. */
  z.strictObject({ id: ObjectId, result: z.literal("duplicate"), revision: Revision }),
  /** Somebody else changed the finding meanwhile; `current: null` where it was removed. */
  z.strictObject({
    id: ObjectId,
    result: z.literal("conflict"),
    revision: z.int().nonnegative(),
    current: Finding.nullable(),
  }),
  z.strictObject({ id: ObjectId, result: z.literal("refused"), problems: z.array(FieldProblem) }),
]);
export type OperationResult = z.infer<typeof OperationResult>;
/** In the order sent. `revision` is the report's. */
export const OperationsAnswer = z.strictObject({ revision: Revision, results: z.array(OperationResult) });
export type OperationsAnswer = z.infer<typeof OperationsAnswer>;

/** `comparison`: made by sealing an inspection. */
export const Sealed = z.strictObject({
  id: ObjectId,
  version: z.int().positive(),
  seal: Sha256,
  comparison: ObjectId.nullable(),
  /** What proves that it was sealed then: to be kept away from the service. */
  receipt: SealReceipt,
});
export type Sealed = z.infer<typeof Sealed>;

export const ReportVersion = z.strictObject({
  id: ObjectId,
  report: ObjectId,
  vehicle: ObjectId,
  order: ObjectId.nullable(),
  kind: ReportKind,
  version: z.int().positive(),
  seal: Sha256,
  sealedAt: Instant,
  organization: Named,
  /** The document comes without answers to this person, until each item is committed or the inspection is sealed. */
  withheld: z.boolean(),
});
export type ReportVersion = z.infer<typeof ReportVersion>;

/** A statement as an inspector gets it before their own report is sealed: where it speaks, and nothing of what it says. */
export const WithheldReport = z.strictObject({
  format: z.literal("evenhand-report-withheld"),
  version: z.literal(1),
  kind: ReportKind,
  sheet: Report.shape.sheet,
  vehicle: Report.shape.vehicle,
  author: Report.shape.author,
  instruments: Report.shape.instruments,
  persons: Report.shape.persons,
  scales: Report.shape.scales,
  /** Findings whose item and position the inspector has committed. */
  findings: z.array(Finding),
  /** Stated, and not shown yet. */
  withheld: z.array(Place),
});
export type WithheldReport = z.infer<typeof WithheldReport>;
/** The sealed bytes, or what stands for them while the inspector must be blind. */
export const ReportDocument = z.union([Report, WithheldReport]);

/** A hundred instruments, fifty people and twenty scales with their names. */
const headerBytes = 256 * 1024;
/** Most bytes of one body of operations. Whoever has more to send sends it in turns. */
export const operationsBytes = 1024 * 1024;

export const reportContracts = {
  "reports.state": { body: StatementRequest, bodyBytes: headerBytes, status: 201, answer: CreatedDraft },
  "reports.inspect": { body: InspectionRequest, bodyBytes: headerBytes, status: 201, answer: CreatedDraft },
  "reports.get": { status: 200, answer: ReportDraft },
  "reports.change": { body: ReportChange, bodyBytes: headerBytes, status: 200, answer: CreatedDraft },
  "reports.operate": {
    body: OperationsRequest,
    bodyBytes: operationsBytes,
    status: 200,
    answer: OperationsAnswer,
  },
  "reports.lookAgain": { costly: true, status: 201, answer: CreatedDraft.extend({ secondLook: SecondLook }) },
  "reports.seal": { costly: true, status: 201, answer: Sealed },
  "reports.revise": { status: 201, answer: CreatedDraft },
  "reportVersions.get": { status: 200, answer: ReportVersion },
  "reportVersions.document": { status: 200, answer: ReportDocument },
} as const satisfies Record<string, Contract>;
