import { Injectable, Logger, type OnModuleInit } from "@nestjs/common";
import { historyTables, type PastPair } from "@evenhand/comparison/history";
import { pastReadings } from "@evenhand/comparison/past-readings";
import { compiledSheet as sheet } from "@evenhand/record/report-document";
import { sealDocument } from "@evenhand/record/seal";
import { HistoryTable, PastReading } from "@evenhand/shared/history";
import { z } from "zod";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readRows } from "../../platform/database/rows.ts";
import { storedComparison, storedReport } from "../../platform/database/stored-documents.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { newestHashes, pastPairs, unread } from "./history.queries.ts";

const readAtOnce = 20;

const Bytes = z.instanceof(Uint8Array);
const Unread = z.object({
  id: z.string(),
  document: Bytes,
  inspection: Bytes,
  reportId: z.string(),
  number: z.number(),
  firm: z.string(),
  inspector: z.string(),
  against: z.string(),
});
type Unread = z.infer<typeof Unread>;
const Pair = z.object({
  firm: z.string(),
  inspector: z.string(),
  against: z.string(),
  readings: z.array(PastReading),
}) satisfies z.ZodType<PastPair>;
const Hash = z.object({ firm: z.string(), hash: z.string() });

const nothing: HistoryTable = { format: "evenhand-history", version: 1, leans: [], gauges: [] };

/** Learns from stored pairs of reports what inspectors' hands and gauges are off by, and seals what it learned. */
@Injectable()
export class HistoryService implements OnModuleInit {
  private readonly logger = new Logger("history");
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly jobs: Jobs,
  ) {}

  onModuleInit(): void {
    this.jobs.register("history", async () => {
      this.logger.log(`tables of past pairs made: ${await this.learn()}`);
    });
  }

  /** Reads out what is new, and makes a table of each firm of which it tells something else now; the old ones stay. */
  async learn(): Promise<number> {
    let read: number;
    do read = await this.database.transaction((tx) => this.readOut(tx));
    while (read === readAtOnce);
    return this.database.transaction((tx) => this.makeTables(tx));
  }

  /** Some in each transaction, so that none takes long. Two at once read the same out, and the second keeps nothing. */
  private async readOut(tx: Transaction): Promise<number> {
    const rows = await readRows(tx, Unread, { text: unread, values: [readAtOnce] });
    await tx.pastPair.createMany({ data: rows.map(told), skipDuplicates: true });
    return rows.length;
  }

  private async makeTables(tx: Transaction): Promise<number> {
    const tables = historyTables(await readRows(tx, Pair, { text: pastPairs, values: [] }));
    const known = new Map(
      (await readRows(tx, Hash, { text: newestHashes, values: [] })).map(({ firm, hash }) => [firm, hash]),
    );
    let made = 0;
    for (const firm of new Set([...tables.keys(), ...known.keys()])) {
      const { text, seal } = sealDocument(HistoryTable.parse(tables.get(firm) ?? nothing), sha256Hex);
      if (known.get(firm) === seal) continue;
      const document = new Uint8Array(Buffer.from(text, "utf8"));
      await tx.historyTable.create({
        data: { id: this.ids.next(), organizationId: firm, hash: seal, document, madeAt: this.clock.now() },
      });
      made += 1;
    }
    return made;
  }
}

const told = ({ id, document, inspection, reportId, number, firm, inspector, against }: Unread) => ({
  comparisonId: id,
  reportId,
  number,
  organizationId: firm,
  inspectorId: inspector,
  againstId: against,
  readings: pastReadings(storedComparison(document), storedReport(inspection), sheet),
});
