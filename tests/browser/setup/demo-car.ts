import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Finding } from "@evenhand/shared/finding";
import { Report } from "@evenhand/shared/report";
import type { Person } from "../../api/setup/person.ts";
import { acceptOrder, order } from "../../api/setup/story.ts";
import { query } from "../../api/setup/database.ts";
import { makePerson, type World } from "../../api/setup/world.ts";
import type { Service } from "../../api/setup/service.ts";

const folder = join(import.meta.dirname, "../../../fixtures/demo/reports");

/** A report of the demo scenario. */
export const demoReport = (name: string): Report =>
  Report.parse(JSON.parse(readFileSync(join(folder, `${name}.json`), "utf8")));

export const headerOf = ({ visit, terms, instruments, persons, scales }: Report) => ({
  visit,
  terms,
  instruments,
  persons,
  scales,
});

async function fill(person: Person, id: string, report: Report): Promise<number> {
  let revision = 1;
  for (let at = 0; at < report.findings.length; at += 200) {
    const operations = report.findings
      .slice(at, at + 200)
      .map((finding) => ({ id: randomUUID(), op: "set" as const, finding, base: null }));
    ({ revision } = await person.does("reports.operate", { path: { id }, body: { operations } }));
  }
  return revision;
}

const seal = (person: Person, id: string, revision: number) =>
  person.does("reports.seal", { path: { id }, revision });

export type DemoPeople = Pick<World, "dealer" | "buyer" | "inspector">;

/** People under the demo's own names. */
export async function demoPeople(service: Service): Promise<DemoPeople> {
  const people = {
    dealer: await makePerson(service, "dealer", "Rafe Tolliver-Ash"),
    buyer: await makePerson(service, "buyer", "Maribel Okonjo-Strand"),
    inspector: await makePerson(service, "inspector", "Ottoline Varga-Reyes"),
  };
  const names = {
    [people.dealer.organization]: "Grandspur Collector Hall",
    [people.buyer.organization]: "Maribel Okonjo-Strand",
    [people.inspector.organization]: "Kestrelmere Motor Surveys",
  };
  for (const [id, name] of Object.entries(names)) {
    await query(service.databaseUrl, "UPDATE organization SET name = $2 WHERE id = $1", [id, name]);
  }
  return people;
}

/** A demo car with its sealed statement. */
export async function stateDemoCar({ dealer }: Pick<DemoPeople, "dealer">, name: string) {
  const report = demoReport(`${name}-statement`);
  const { id: vehicle } = await dealer.does("vehicles.create", {
    body: {
      organization: dealer.organization,
      vehicle: report.vehicle,
      asking: { minor: 5_450_000, currency: "USD" },
      words: "One family from new, and three since.",
    },
  });
  const { id } = await dealer.does("reports.state", { path: { id: vehicle }, body: headerOf(report) });
  const sealed = await seal(dealer, id, await fill(dealer, id, report));
  return { vehicle, report: id, statement: sealed.id };
}

/** An inspection of an accepted order, filled in, with ways to answer one place otherwise and to seal it. */
export async function fillInspection(inspector: Person, orderId: string, report: Report) {
  const { id } = await inspector.does("reports.inspect", { path: { id: orderId }, body: headerOf(report) });
  let revision = await fill(inspector, id, report);
  return {
    change: async ({ item, position, answer }: Pick<Finding, "item" | "position" | "answer">) => {
      const isThere = (one: Pick<Finding, "item" | "position">): boolean =>
        one.item === item && one.position === position;
      const draft = await inspector.does("reports.get", { path: { id } });
      const finding = draft.report.findings.find(isThere);
      const base = draft.findings.find(isThere)?.revision ?? null;
      if (finding === undefined) throw new Error(`Nothing stands at ${item} ${position}.`);
      const operations = [{ id: randomUUID(), op: "set" as const, finding: { ...finding, answer }, base }];
      ({ revision } = await inspector.does("reports.operate", { path: { id }, body: { operations } }));
    },
    seal: () => seal(inspector, id, revision),
  };
}

async function sealInspection(inspector: Person, orderId: string, report: Report) {
  return (await fillInspection(inspector, orderId, report)).seal();
}

/** The same car, ordered, inspected and compared. */
export async function compareDemoCar(people: DemoPeople, name: string) {
  const { buyer, inspector } = people;
  const car = await stateDemoCar(people, name);
  const orderId = await order(buyer, inspector, car.vehicle, car.statement);
  await acceptOrder(inspector, orderId);
  const sealed = await sealInspection(inspector, orderId, demoReport(`${name}-inspection`));
  if (sealed.comparison === null) throw new Error("The sealed inspection made no comparison.");
  return { ...car, order: orderId, inspection: sealed.id, comparison: sealed.comparison };
}
