import assert from "node:assert/strict";
import { randomUUID } from "node:crypto";
import type { Comparison } from "@evenhand/shared/comparison";
import type { FindingInput } from "@evenhand/shared/finding";
import type { SummaryCreated } from "@evenhand/shared/http/summaries";
import type { Sealed } from "@evenhand/shared/http/reports";
import type { Vehicle } from "@evenhand/shared/report";
import { asSummary } from "@evenhand/shared/as-summary";
import type { Acknowledgement, Summary } from "@evenhand/shared/summary";
import type { Person } from "./person.ts";
import type { World } from "./world.ts";

/** An invented car. */
export const car: Vehicle = {
  make: "Uthwick",
  model: "Alder",
  modelYear: 1958,
  identification: "A7K214883",
  form: {
    body: "sedan",
    doors: 4,
    cylinders: 6,
    construction: "body-on-frame",
    gearbox: "manual",
    driven: "rear",
    fuelSystem: "carburetor",
    systemVolts: 12,
    brakes: { front: "disc", rear: "drum" },
    leftHandDrive: true,
  },
};

export const header = {
  visit: { started: "2026-05-04T15:00:00Z", ended: "2026-05-04T18:40:00Z", zone: "America/Chicago" },
  instruments: [
    {
      id: "tread-gauge",
      name: "tread depth gauge",
      resolution: { value: 0.5, unit: "1/32in" },
      accuracy: { absolute: { value: 0.3, unit: "1/32in" } },
    },
  ],
  persons: [{ id: "rowan", name: "Rowan Teasdale" }],
};

export const treadDepth = (position: string, ...depths: number[]): FindingInput => ({
  item: "wheels.tread-depth",
  position,
  answer: {
    kind: "reading",
    unit: "1/32in",
    values: depths.map((value, index) => ({ value, spot: ["inner", "center", "outer"][index] ?? "center" })),
  },
  basis: "measured",
  instrument: "tread-gauge",
});
export const horn = (value: "yes" | "no" | "intermittent"): FindingInput => ({
  item: "electrics.horn",
  answer: { kind: "working", value },
});
export const headliner = (value: string): FindingInput => ({
  item: "interior.headliner",
  answer: { kind: "grade", scale: "house", value },
});

/** The dealer says all is well; the inspector finds worn tires, no horn, and sees no headliner. */
export const stated: readonly FindingInput[] = [
  treadDepth("left-front", 8, 8, 8),
  treadDepth("right-front", 8, 8, 8),
  horn("yes"),
  headliner("light-wear"),
];
export const inspected: readonly FindingInput[] = [
  treadDepth("left-front", 2, 2, 2),
  treadDepth("right-front", 8, 8, 8),
  horn("no"),
  { item: "interior.headliner", answer: { kind: "not-seen", reason: "covered" } },
];

export const setOperation = (finding: FindingInput, base: number | null = null) => ({
  id: randomUUID(),
  op: "set" as const,
  finding,
  base,
});

/** Writes findings into a draft. */
export async function write(
  person: Person,
  report: string,
  findings: readonly FindingInput[],
): Promise<number> {
  const { revision } = await person.does("reports.operate", {
    path: { id: report },
    body: { operations: findings.map((finding) => setOperation(finding)) },
  });
  return revision;
}

export async function makeVehicle(dealer: Person, vehicle: Vehicle = car): Promise<string> {
  const { id } = await dealer.does("vehicles.create", {
    body: { organization: dealer.organization, vehicle },
  });
  return id;
}

export async function draftStatement(
  dealer: Person,
  vehicle: string,
  findings = stated,
): Promise<{ id: string; revision: number }> {
  const { id } = await dealer.does("reports.state", { path: { id: vehicle }, body: header });
  return { id, revision: await write(dealer, id, findings) };
}

export const seal = async (person: Person, report: string, revision: number): Promise<Sealed> =>
  person.does("reports.seal", { path: { id: report }, revision });

/** A listed car with its first sealed statement. */
export async function publish(
  dealer: Person,
  findings = stated,
): Promise<{ vehicle: string; report: string; statement: string }> {
  const vehicle = await makeVehicle(dealer);
  const draft = await draftStatement(dealer, vehicle, findings);
  const { id } = await seal(dealer, draft.id, draft.revision);
  return { vehicle, report: draft.id, statement: id };
}

export async function order(
  buyer: Person,
  inspector: Person,
  vehicle: string,
  statement: string,
): Promise<string> {
  const body = { inspector: inspector.organization, statement };
  const { id } = await buyer.does("orders.create", { path: { id: vehicle }, body });
  return id;
}

export async function acceptOrder(inspector: Person, id: string): Promise<void> {
  await inspector.does("orders.accept", { path: { id }, revision: 1, body: { independent: true } });
}

export type Inspected = {
  vehicle: string;
  statement: string;
  statementReport: string;
  order: string;
  inspection: string;
  inspectionReport: string;
  comparison: string;
};

/** The whole way up to the comparison. */
export async function inspect(
  { dealer, buyer, inspector }: Pick<World, "dealer" | "buyer" | "inspector">,
  findings = inspected,
): Promise<Inspected> {
  const { vehicle, statement, report: statementReport } = await publish(dealer);
  const orderId = await order(buyer, inspector, vehicle, statement);
  await acceptOrder(inspector, orderId);
  const { id } = await inspector.does("reports.inspect", { path: { id: orderId }, body: header });
  const sealed = await seal(inspector, id, await write(inspector, id, findings));
  return {
    vehicle,
    statement,
    statementReport,
    order: orderId,
    inspection: sealed.id,
    inspectionReport: id,
    comparison: sealed.comparison ?? "",
  };
}

/** The comparison as its readers get it. */
export async function readComparison(person: Person, id: string): Promise<Comparison> {
  return person.does("comparisons.document", { path: { id } });
}

/** Index of the entry about a place. */
export const entryAt = (comparison: Comparison, item: string, position = ""): number =>
  comparison.entries.findIndex((entry) => entry.item === item && entry.position === position);

export async function summarize(
  buyer: Person,
  comparison: string,
): Promise<SummaryCreated & { summary: Summary }> {
  const made = await buyer.does("summaries.create", { path: { id: comparison }, body: {} });
  const stored = await buyer.does("summaries.document", { path: { id: made.id } });
  return { ...made, summary: asSummary(stored) };
}

/** An answer for each open matter. */
export const acknowledgeAll = ({ openMatters }: Summary): Acknowledgement[] =>
  openMatters.map(({ id, name }) => ({
    matter: id,
    answer: "look-again",
    words: `I know of ${name} and will have it looked at.`,
  }));

/** Changes one finding of a sealed report and seals the next version. */
export async function reseal(person: Person, report: string, finding: FindingInput): Promise<Sealed> {
  await person.does("reports.revise", { path: { id: report } });
  const draft = await person.does("reports.get", { path: { id: report } });
  const base = draft.findings.find(
    (each) => each.item === finding.item && each.position === (finding.position ?? ""),
  );
  const { revision, results } = await person.does("reports.operate", {
    path: { id: report },
    body: { operations: [setOperation(finding, base?.revision ?? null)] },
  });
  assert.equal(results[0]?.result, "applied");
  return seal(person, report, revision);
}
