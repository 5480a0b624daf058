import { randomUUID } from "node:crypto";
import { Injectable } from "@nestjs/common";
import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type {
  DemoEntry,
  DemoHandOver,
  DemoOrder,
  DemoRelease,
  DemoReport,
  DemoSettling,
  DemoSummary,
  DemoVehicle,
  DemoVisit,
  DemoWhen,
} from "@evenhand/shared/demo-scenario";
import type { Report } from "@evenhand/shared/report";
import type { Acknowledgement, Summary } from "@evenhand/shared/summary";
import { AccountsService } from "../capabilities/accounts/index.ts";
import { ComparisonsService } from "../capabilities/comparisons/index.ts";
import { OrdersService } from "../capabilities/orders/index.ts";
import { OrganizationsService } from "../capabilities/organizations/index.ts";
import { ReleasesService, SettlementService } from "../capabilities/releases/index.ts";
import { OperationsService, ReportsService, SealingService } from "../capabilities/reports/index.ts";
import { CostTablesService, DecisionsService, SummariesService } from "../capabilities/summaries/index.ts";
import { VehiclesService } from "../capabilities/vehicles/index.ts";
import type { Actor } from "../platform/auth/actor.ts";
import type { SetClock } from "../platform/clock/index.ts";
import type { Transaction } from "../platform/database/database.ts";
import { DemoWorld } from "./demo-world.ts";
import { DemoAsks } from "./load-asks.ts";
import { DemoHandOvers } from "./load-hand-overs.ts";
import { DemoHours } from "./load-hours.ts";
import { DemoPictures } from "./load-pictures.ts";
import { DemoVisits } from "./load-visits.ts";
import type { Scenario } from "./read-scenario.ts";
import { datedFrom, movedReport } from "./told-dates.ts";

const hour = 60 * 60_000;
const batch = 400;

/** What happens, and what only then is known to happen later. */
type Event = { at: Date; what: string; happen: () => Promise<Event[] | void> };

/** Every service the story goes through. */
@Injectable()
export class DemoServices {
  constructor(
    readonly accounts: AccountsService,
    readonly organizations: OrganizationsService,
    readonly vehicles: VehiclesService,
    readonly orders: OrdersService,
    readonly reports: ReportsService,
    readonly operations: OperationsService,
    readonly sealing: SealingService,
    readonly comparisons: ComparisonsService,
    readonly releases: ReleasesService,
    readonly settlement: SettlementService,
    readonly costTables: CostTablesService,
    readonly summaries: SummariesService,
    readonly decisions: DecisionsService,
    readonly handOvers: DemoHandOvers,
    readonly hours: DemoHours,
    readonly visits: DemoVisits,
    readonly asks: DemoAsks,
    readonly pictures: DemoPictures,
  ) {}
}

/** Plays the scenario through the services, each event at its own hour, all within one open transaction. */
export class DemoLoader {
  readonly world: DemoWorld;
  private readonly scenario: Scenario;
  private readonly services: DemoServices;
  private readonly clock: SetClock;
  private readonly tx: Transaction;
  private readonly today: Date;

  /** @param clock stands at the hour from which the scenario is dated */
  constructor(tx: Transaction, scenario: Scenario, services: DemoServices, clock: SetClock) {
    this.tx = tx;
    this.today = clock.now();
    this.scenario = datedFrom(scenario, this.today);
    this.services = services;
    this.clock = clock;
    this.world = new DemoWorld(this.scenario, tx);
  }

  async load(): Promise<DemoWorld> {
    const events = this.events();
    this.clock.set(new Date(Math.min(...events.map(({ at }) => at.getTime())) - 24 * hour));
    await this.people();
    await this.services.hours.enter(this.world, this.scenario);
    for (let open = inOrder(events), next = open.shift(); next !== undefined; next = open.shift())
      open = inOrder([...open, ...(await this.goOn(next))]);
    this.clock.set(this.today);
    return this.world;
  }

  private async goOn({ at, what, happen }: Event): Promise<Event[]> {
    this.clock.set(at);
    try {
      return (await happen()) ?? [];
    } catch (error) {
      throw new Error(`The scenario does not go on at ${what}.`, { cause: error });
    }
  }

  private async people(): Promise<void> {
    const { organizations, accounts, costTable } = this.scenario;
    for (const { key, name, kind, place, zone } of organizations) {
      const { id } = await this.services.organizations.admit(this.tx, { name, kind, place, zone });
      this.world.set("organization", key, id);
    }
    for (const { key, memberships, ...person } of accounts) {
      const id = await this.services.accounts.register(this.tx, person);
      this.world.set("account", key, id);
      for (const { organization, role } of memberships)
        await this.services.accounts.join(this.tx, id, this.world.get("organization", organization), role);
    }
    for (const { key, kind } of organizations)
      if (kind === "buyer")
        await this.services.costTables.putIn(this.tx, this.world.memberOf(key), 0, costTable);
  }

  private events(): Event[] {
    const { vehicles, orders, releases, summaries, visits, questions, complaints } = this.scenario;
    const ofVisits = new Set(visits.map(({ begun }) => begun?.report));
    const reports = this.scenario.reports.filter(({ key }) => !ofVisits.has(key));
    return [
      ...vehicles.map((each) => this.vehicleEvent(each)),
      ...orders.flatMap((each) => this.orderEvents(each)),
      ...reports.map((each) => this.reportEvent(each)),
      ...releases.flatMap((each) => this.releaseEvents(each)),
      ...summaries.flatMap((each) => this.summaryEvents(each)),
      ...this.scenario.handOvers.flatMap((each) => this.handOverEvents(each)),
      ...visits.flatMap((each) => this.visitEvents(each)),
      ...questions.map((each) =>
        this.ago(each.hoursAgo, "a question", () => this.services.asks.ask(this.world, each)),
      ),
      ...complaints.map((each) =>
        this.ago(each.hoursAgo, "a complaint", () => this.services.asks.complain(this.world, each)),
      ),
    ];
  }

  private ago(hours: number, what: string, happen: Event["happen"]): Event {
    return { at: new Date(this.today.getTime() - hours * hour), what, happen };
  }

  private visitEvents(visit: DemoVisit): Event[] {
    const { visits } = this.services;
    const what = `visit ${visit.key}`;
    const book = async () => this.beginning(visit, await visits.book(this.world, visit, this.today));
    return [
      this.ago(visit.bookedHoursAgo, what, book),
      ...visit.moves.map((move) => this.ago(move.hoursAgo, what, () => visits.move(this.world, visit, move))),
    ];
  }

  /** The visit begins at its hour, and what has been written down since is in its draft. */
  private beginning(visit: DemoVisit, start: Date): Event[] {
    const report = this.scenario.reports.find(({ key }) => key === visit.begun?.report);
    if (report === undefined) return [];
    const begin = async (): Promise<void> => {
      await this.services.visits.begin(this.world, visit);
      const told = this.file(report.key);
      const by = start.getTime() - Date.parse(told.visit.started);
      await this.writeReport(report, movedReport(told, by));
    };
    return [{ at: start, what: `beginning of ${visit.key}`, happen: begin }];
  }

  private vehicleEvent({ key, dealer, by, vehicle, asking, words }: DemoVehicle): Event {
    const starts = this.scenario.reports
      .filter((report) => report.vehicle === key)
      .map((report) => new Date(this.file(report.key).visit.started).getTime());
    const happen = async () => {
      const organization = this.world.get("organization", dealer);
      const request = { organization, vehicle, asking, words };
      this.world.set(
        "vehicle",
        key,
        (await this.services.vehicles.create(this.tx, this.world.actor(by), request)).id,
      );
    };
    return { at: new Date(Math.min(...starts) - hour), what: `vehicle ${key}`, happen };
  }

  private orderEvents({
    key,
    vehicle,
    buyer,
    inspector,
    statement,
    orderedAt,
    acceptance,
  }: DemoOrder): Event[] {
    const create = async () => {
      const request = {
        inspector: this.world.get("organization", inspector),
        statement: this.world.get("version", statement),
      };
      const { id } = await this.services.orders.create(
        this.tx,
        this.world.actor(buyer),
        this.world.get("vehicle", vehicle),
        request,
      );
      this.world.set("order", key, id);
    };
    const created = { at: new Date(orderedAt), what: `order ${key}`, happen: create };
    if (acceptance === undefined) return [created];
    const { by, at, independent, interests } = acceptance;
    const accept = async () => {
      const id = this.world.get("order", key);
      await this.services.orders.accept(this.tx, this.world.actor(by), id, 1, { independent, interests });
    };
    return [created, { at: new Date(at), what: `acceptance of ${key}`, happen: accept }];
  }

  private reportEvent(report: DemoReport): Event {
    const accepted = this.scenario.orders.find((order) => order.key === report.order)?.acceptance?.at;
    const begun = Math.max(
      new Date(this.file(report.key).visit.started).getTime(),
      accepted === undefined ? 0 : new Date(accepted).getTime() + 1,
    );
    const at = report.sealedAt === undefined ? new Date(begun) : new Date(report.sealedAt);
    return { at, what: `report ${report.key}`, happen: () => this.writeReport(report) };
  }

  private async writeReport(report: DemoReport, file = this.file(report.key)): Promise<void> {
    const actor = this.world.actor(report.by);
    const { id } = await this.beginReport(actor, report, file);
    const { findings } = file;
    let revision = 1;
    for (let from = 0; from < findings.length; from += batch) {
      const operations = findings
        .slice(from, from + batch)
        .map((finding) => ({ id: randomUUID(), op: "set" as const, finding, base: null }));
      const answer = await this.services.operations.apply(this.tx, actor, id, { operations });
      const refused = answer.results.find(({ result }) => result !== "applied");
      if (refused !== undefined) throw new Error(`A finding was not taken: ${JSON.stringify(refused)}`);
      revision = answer.revision;
    }
    const pictures = this.scenario.pictures.filter((each) => each.report === report.key);
    await this.services.pictures.add(this.world, report, id, { pictures, began: file.visit.started });
    if (report.state === "draft") return;
    const sealed = await this.services.sealing.seal(this.tx, actor, id, revision);
    this.world.set("version", report.key, sealed.id);
    const comparison = this.scenario.comparisons.find((each) => each.b === report.key);
    if (comparison !== undefined && sealed.comparison !== null)
      this.world.set("comparison", comparison.key, sealed.comparison);
  }

  private async beginReport(actor: Actor, report: DemoReport, file: Report): Promise<{ id: string }> {
    const { visit, terms, instruments, persons, scales } = file;
    const header = { visit, terms, instruments, persons, scales };
    if (report.order !== undefined)
      return this.services.reports.inspect(this.tx, actor, this.world.get("order", report.order), header);
    if (report.kind !== "statement" && report.kind !== "acquisition")
      throw new Error(`A report of the kind ${report.kind} needs an order.`);
    return this.services.reports.state(this.tx, actor, this.world.get("vehicle", report.vehicle), {
      ...header,
      kind: report.kind,
    });
  }

  private releaseEvents({ key, comparison, by, entry, releasedAt, moves }: DemoRelease): Event[] {
    const release = async () => {
      const [actor, id] = [this.world.actor(by), this.world.get("comparison", comparison)];
      const { comparison: document } = await this.services.comparisons.lockOrdered(this.tx, actor, id);
      const entries = entriesAbout(document, entry);
      const { items } = await this.services.releases.create(this.tx, actor, id, { entries });
      this.world.set("release", key, items.map((each) => each.id).join(" "));
    };
    return [
      { at: this.hour(releasedAt), what: `release ${key}`, happen: release },
      ...moves.map((move) => ({
        at: this.hour(move.at),
        what: `${move.move} of ${key}`,
        happen: () => this.settle(key, move),
      })),
    ];
  }

  /** One move on every line of a release. */
  private async settle(key: string, { by, at: _at, evidence = [], ...move }: DemoSettling): Promise<void> {
    const ids = this.world.get("release", key).split(" ");
    const lines = await this.tx.release.findMany({
      where: { id: { in: ids } },
      select: { id: true, revision: true },
      orderBy: { id: "asc" },
    });
    await this.services.settlement.move(this.tx, this.world.actor(by), { lines, evidence, ...move });
  }

  private handOverEvents(handOver: DemoHandOver): Event[] {
    const { handOvers } = this.services;
    const { arrangedAt, reports, claim } = handOver;
    const what = `hand-over ${handOver.key}`;
    return [
      { at: new Date(arrangedAt), what, happen: () => handOvers.arrange(this.world, handOver) },
      ...reports.map((signed) => ({
        at: new Date(signed.report.ended),
        what: `${signed.report.stage} of ${handOver.key}`,
        happen: () => handOvers.sign(this.world, handOver, signed),
      })),
      ...(claim === undefined
        ? []
        : [
            {
              at: new Date(claim.at),
              what: `claim of ${handOver.key}`,
              happen: () => handOvers.claim(this.world, handOver, claim.note),
            },
          ]),
    ];
  }

  private hour(when: DemoWhen): Date {
    return typeof when === "string" ? new Date(when) : new Date(this.today.getTime() - when.hoursAgo * hour);
  }

  private summaryEvents({ key, comparison, by, createdAt, decision }: DemoSummary): Event[] {
    const create = async () => {
      const id = this.world.get("comparison", comparison);
      this.world.set(
        "summary",
        key,
        (await this.services.summaries.create(this.tx, this.world.actor(by), id)).id,
      );
    };
    const created = { at: new Date(createdAt), what: `summary ${key}`, happen: create };
    if (decision === undefined) return [created];
    const decide = async () => {
      const [actor, id] = [this.world.actor(by), this.world.get("summary", key)];
      const { summary, hash } = await this.services.summaries.hold(this.tx, actor, id);
      const { acknowledgement, at: _at, ...request } = decision;
      const acknowledgements = acknowledgement === undefined ? [] : acknowledge(summary, acknowledgement);
      await this.services.decisions.decide(this.tx, actor, id, { ...request, hash, acknowledgements });
    };
    return [created, { at: new Date(decision.at), what: `decision on ${key}`, happen: decide }];
  }

  private file(key: string): Report {
    const file = this.scenario.files.get(key);
    if (file === undefined) throw new Error(`The scenario has no report "${key}".`);
    return file;
  }
}

/** In the order in which they happen; of two at one instant, as they stand in the scenario. */
const inOrder = (events: readonly Event[]): Event[] =>
  events.toSorted((a, b) => a.at.getTime() - b.at.getTime());

/** Every entry about the place, or only the one about the fault named. */
function entriesAbout({ entries }: Comparison, { item, position, fault }: DemoEntry): number[] {
  const isAbout = (entry: Entry): boolean =>
    entry.item === item &&
    entry.position === position &&
    (fault === undefined || (entry.atom.of === "fault" && entry.atom.kind === fault));
  const found = entries.flatMap((entry, index) => (isAbout(entry) ? [index] : []));
  if (found.length === 0)
    throw new Error(`The comparison has no entry about ${item} ${position} ${fault ?? ""}.`);
  return found;
}

/** The sentence for each open matter, with its name in it. */
function acknowledge({ openMatters }: Summary, sentence: string): Acknowledgement[] {
  return openMatters.map(({ id, name }) => ({
    matter: id,
    answer: "first",
    words: sentence.replaceAll("{matter}", name),
  }));
}
