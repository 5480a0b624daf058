import { Actor, type ActorMembership } from "../platform/auth/actor.ts";
import type { Transaction } from "../platform/database/database.ts";
import type { Scenario } from "./read-scenario.ts";

/** What the names of the scenario have become: ids by kind and key, and the people who act. */
export class DemoWorld {
  readonly ids = new Map<string, string>();
  private readonly actors = new Map<string, Actor>();
  private readonly scenario: Scenario;

  /** @param tx in which everything of it happens */
  constructor(
    scenario: Scenario,
    readonly tx: Transaction,
  ) {
    this.scenario = scenario;
  }

  set(kind: string, key: string, id: string): void {
    this.ids.set(`${kind} ${key}`, id);
  }

  get(kind: string, key: string): string {
    const id = this.ids.get(`${kind} ${key}`);
    if (id === undefined) throw new Error(`The scenario speaks of the ${kind} "${key}" before it is there.`);
    return id;
  }

  /** The account, acting as a member of its organizations. */
  actor(key: string): Actor {
    const known = this.actors.get(key);
    if (known !== undefined) return known;
    const account = this.scenario.accounts.find((each) => each.key === key);
    if (account === undefined) throw new Error(`The scenario has no account "${key}".`);
    const memberships = account.memberships.map(({ organization, role }): ActorMembership => {
      const kind = this.scenario.organizations.find((each) => each.key === organization)?.kind;
      if (kind === undefined) throw new Error(`The scenario has no organization "${organization}".`);
      return { organization: this.get("organization", organization), kind, role };
    });
    const actor = new Actor(this.get("account", key), memberships, { session: "demo" });
    this.actors.set(key, actor);
    return actor;
  }

  /** The clock an inspector keeps and the money asked for. */
  timeOf(calendar: string): { zone: string; currency: string } {
    const known = this.scenario.calendars.find(({ key }) => key === calendar);
    if (known === undefined) throw new Error(`The scenario has no calendar "${calendar}".`);
    const { hours, fees } = known.time;
    return { zone: hours.zone, currency: fees.currency };
  }

  /** Somebody of an organization. */
  memberOf(organization: string): Actor {
    const account = this.scenario.accounts.find((each) =>
      each.memberships.some((membership) => membership.organization === organization),
    );
    if (account === undefined) throw new Error(`Nobody in the scenario belongs to "${organization}".`);
    return this.actor(account.key);
  }
}
