import { Injectable } from "@nestjs/common";
import type { KeptEntry } from "@evenhand/shared/chain";
import { OrganizationExport } from "@evenhand/shared/http/chain";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { findRow, readRows } from "../../platform/database/rows.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { readEntries, readReceipts } from "../../platform/record/read-chain.ts";
import { SigningKeys } from "../../platform/record/signing-keys.ts";
import { documentsOf, organizationOf, partsOf } from "./export.queries.ts";

const shape = OrganizationExport.shape;
const OrganizationRow = shape.organization.extend({ members: shape.members });
const PartRow = z.object({ rows: shape.vehicles });

type Part = keyof typeof partsOf;

/** Everything an organization holds here, for its administrators to take away. */
@Injectable()
export class ExportService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly keys: SigningKeys,
  ) {}

  /** Sealed documents stand in it by their seal and the address where they are read: there it is noted who was shown what. */
  async exportOf(actor: Actor, id: string): Promise<OrganizationExport> {
    if (!actor.isAdmin(id)) throw notFound("organization");
    const asked = { text: organizationOf, values: [id] };
    const { members, ...organization } = found(
      await findRow(this.database, OrganizationRow, asked),
      "organization",
    );
    checkMayRead(actor, organization.kind);
    const own = new Set(members.map(({ account }) => account));
    const entries = await readEntries(this.database, id);
    return {
      format: "evenhand-export-1",
      madeAt: this.clock.now().toISOString(),
      organization,
      members,
      documents: await readRows(this.database, shape.documents.element, { text: documentsOf, values: [id] }),
      ...(await this.parts(id)),
      record: entries.map((entry) => withOwnNames(entry, own)),
      receipts: await readReceipts(this.database, id),
      keys: this.keys.published(),
    };
  }

  private async parts(id: string): Promise<Pick<OrganizationExport, Part>> {
    const part = async (name: Part): Promise<OrganizationExport[Part]> =>
      found(await findRow(this.database, PartRow, { text: partsOf[name], values: [id] }), "organization")
        .rows;
    return {
      drafts: await part("drafts"),
      decisionDrafts: await part("decisionDrafts"),
      costTables: await part("costTables"),
      transportRates: await part("transportRates"),
      caseDocuments: await part("caseDocuments"),
      handOvers: await part("handOvers"),
      vehicles: await part("vehicles"),
      orders: await part("orders"),
      visits: await part("visits"),
      releases: await part("releases"),
      decisions: await part("decisions"),
      questions: await part("questions"),
      complaints: await part("complaints"),
      sites: await part("sites"),
      calendars: await part("calendars"),
    };
  }
}

/** What a dealer or buyer holds tells of statements: whoever also inspects cars may have to be blind to one of them. */
function checkMayRead(actor: Actor, kind: OrganizationExport["organization"]["kind"]): void {
  if (kind === "inspector" || actor.organizations("inspector").length === 0) return;
  throw new ProblemError(
    "not-permitted",
    "You also belong to an inspection firm. Have an administrator who belongs to none take this away.",
  );
}

/** The names of other parties' people are theirs to give away. */
function withOwnNames(entry: KeptEntry, own: ReadonlySet<string>): KeptEntry {
  if (entry.actor === null || own.has(entry.actor)) return entry;
  return { ...entry, openings: { ...entry.openings, name: null } };
}
