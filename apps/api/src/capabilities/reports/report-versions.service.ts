import { Injectable } from "@nestjs/common";
import { Report } from "@evenhand/shared/report";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { KeptDocuments } from "../../platform/database/kept-documents.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { committedPlaces, versionDocument, versionMeta, versionSeal } from "./reports.queries.ts";
import { withhold } from "./withhold.ts";

type Version = { seal: string; kind: string; vehicle: string; withheld: boolean };

@Injectable()
export class ReportVersionsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly kept: KeptDocuments,
  ) {}

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await this.database.findRow<{ body: string }>({
      name: "report-version",
      text: versionMeta,
      values: [actor.organizations(), id],
    });
    return new JsonText(found(row, "report").body);
  }

  /** The sealed bytes; to an inspector who must be blind, the places stated and what they have committed themselves. */
  async document(actor: Actor, id: string): Promise<JsonText> {
    const version = found(
      await this.database.findRow<Version>({
        name: "report-version-seal",
        text: versionSeal,
        values: [actor.organizations(), id],
      }),
      "report",
    );
    if (version.withheld) return this.withheld(actor, id, version);
    if (version.kind === "statement") await this.noteExposure(actor, id, version.vehicle, true);
    return new JsonText(await this.read(id, version.seal), version.seal);
  }

  /** It is noted before anything is read, so that what is committed meanwhile never counts as blind by mistake. */
  private async withheld(actor: Actor, id: string, version: Version): Promise<JsonText> {
    await this.noteExposure(actor, id, version.vehicle, false);
    const committed = await this.database.rows<{ item: string; position: string }>({
      text: committedPlaces,
      values: [actor.organizations(), version.vehicle],
    });
    const statement = Report.parse(
      JSON.parse(Buffer.from(await this.read(id, version.seal)).toString("utf8")),
    );
    return new JsonText(JSON.stringify(withhold(statement, committed)));
  }

  private read(id: string, seal: string): Promise<Uint8Array> {
    return this.kept.get(seal, async () => {
      const row = await this.database.findRow<{ document: Uint8Array }>({
        text: versionDocument,
        values: [id],
      });
      return found(row, "report").document;
    });
  }

  private async noteExposure(actor: Actor, id: string, vehicle: string, whole: boolean): Promise<void> {
    for (const organization of actor.organizations("inspector"))
      await this.database.rows({
        text: `INSERT INTO statement_exposure (id, organization_id, vehicle_id, version_id, account_id, whole, shown_at)
          SELECT $1, $2, $3, $4, $5, $6, $7 WHERE NOT $6 OR NOT EXISTS (
            SELECT 1 FROM statement_exposure e WHERE e.organization_id = $2 AND e.vehicle_id = $3 AND e.whole)`,
        values: [this.ids.next(), organization, vehicle, id, actor.account, whole, this.clock.now()],
      });
  }
}
