import { Injectable } from "@nestjs/common";
import { SealReceipt } from "@evenhand/shared/chain";
import type { RecordKeys } from "@evenhand/shared/http/chain";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Database } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { SigningKeys } from "../../platform/record/signing-keys.ts";
import { receiptOf } from "./chain.queries.ts";

const Row = SealReceipt.omit({ what: true }).extend({ at: z.date() });

/** What proves what was sealed, and by which keys. */
@Injectable()
export class ReceiptsService {
  constructor(
    private readonly database: Database,
    private readonly keys: SigningKeys,
  ) {}

  published(): RecordKeys {
    return { items: this.keys.published() };
  }

  /** Of a version or summary that the person may read; there is none of what was sealed before there were any. */
  async get(actor: Actor, id: string): Promise<SealReceipt> {
    const asked = { text: receiptOf, values: [actor.organizations(), id] };
    const { at, ...receipt } = found(await findRow(this.database, Row, asked), "receipt");
    return { what: "seal", ...receipt, at: at.toISOString() };
  }
}
