import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Report, VehicleForm } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";

export const sheet = compileSheet(sheetVersion1);

export const form: VehicleForm = {
  body: "sedan",
  doors: 2,
  cylinders: 6,
  construction: "body-on-frame",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "disc", rear: "drum" },
  leftHandDrive: true,
};

const common = {
  format: "evenhand-report",
  version: 1,
  sheet: { id: "evenhand", version: 1 },
  vehicle: { make: "Alderbrook", model: "Meridian", modelYear: 1958, identification: "AM58-10442", form },
  instruments: [],
  persons: [],
  scales: [],
} as const satisfies Partial<Report>;

/** A finding by its place and answer; the rest as a person would leave it. */
export const finding = (item: string, answer: Answer, more: Partial<Finding> = {}): Finding => ({
  item,
  position: "",
  answer,
  firmness: "asserted",
  basis: "seen",
  ...more,
});

/** A dealer's statement. */
export const statement = (findings: Finding[], more: Partial<Report> = {}): Report => ({
  ...common,
  instruments: [],
  persons: [],
  scales: [],
  kind: "statement",
  author: { organization: "Larkspur Motor House", role: "dealer" },
  visit: { started: "2026-05-04T15:00:00Z", zone: "America/Chicago" },
  findings,
  ...more,
});

/** An inspector's report, eight days later. */
export const inspection = (findings: Finding[], more: Partial<Report> = {}): Report => ({
  ...statement(findings),
  kind: "inspection",
  author: { organization: "Quiet Hill Inspection", role: "inspector" },
  visit: { started: "2026-05-12T15:00:00Z", zone: "America/Chicago" },
  ...more,
});
