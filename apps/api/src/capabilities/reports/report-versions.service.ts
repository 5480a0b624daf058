import { Injectable } from "@nestjs/common";
import { Report } from "@evenhand/shared/report";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { DocumentCache } from "../../platform/database/document-cache.ts";
import { sealedBytes } from "../../platform/database/sealed-bytes.ts";
import { BodyRow, DocumentRow, findRow, run } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { showable, wholeCar, withhold } from "@evenhand/record/blindness";
import type { Place } from "@evenhand/record/place";
import { z } from "zod";
import { readWorks } from "../../platform/access/exposure.ts";
import { notePlacesShown, versionDocument, versionMeta, versionSeal } from "./reports.queries.ts";

const Version = z.object({ seal: z.string(), vehicle: z.string(), withheld: z.boolean() });

@Injectable()
export class ReportVersionsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly kept: DocumentCache,
  ) {}

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findRow(this.database, BodyRow, {
      name: "report-version",
      text: versionMeta,
      values: [actor.organizations(), id],
    });
    return new JsonText(found(row, "report").body);
  }

  /** The sealed bytes; to an inspector who must be blind, the places stated and what they have committed themselves. */
  async document(actor: Actor, id: string): Promise<JsonText> {
    const version = found(
      await findRow(this.database, Version, {
        name: "report-version-seal",
        text: versionSeal,
        values: [actor.organizations(), id, actor.account, this.clock.now()],
      }),
      "report",
    );
    const document = await this.read(id, version.seal);
    if (!version.withheld) return new JsonText(document, version.seal);
    const open = await this.noteOpen(actor, id, version.vehicle);
    if (open === "whole") return new JsonText(document, version.seal);
    const statement = Report.parse(JSON.parse(Buffer.from(document).toString("utf8")));
    return new JsonText(JSON.stringify(withhold(statement, open)));
  }

  /** What may be shown, noted as shown in the transaction that decides it. */
  private async noteOpen(actor: Actor, id: string, vehicle: string): Promise<"whole" | Place[]> {
    return this.database.transaction(async (tx) => {
      const open = showable(await readWorks(tx, actor.organizations(), vehicle));
      const shown = open === "whole" ? [wholeCar] : open;
      const places = [shown.map(({ item }) => item), shown.map(({ position }) => position)];
      await run(tx, {
        text: notePlacesShown,
        values: [actor.organizations(), id, actor.account, this.clock.now(), vehicle, ...places],
      });
      return open;
    });
  }

  private read(id: string, seal: string): Promise<Uint8Array> {
    return this.kept.get(seal, async () => {
      const row = await findRow(this.database, DocumentRow, {
        text: versionDocument,
        values: [id],
      });
      return sealedBytes(found(row, "report").document, seal);
    });
  }
}
