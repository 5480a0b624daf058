import { Injectable } from "@nestjs/common";
import { newsLetter } from "@evenhand/wording/letter";
import type { NoticeKind, NoticesRead } from "@evenhand/shared/http/notices";
import type { PageQuery } from "@evenhand/shared/http/paging";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { SiteAddress } from "../../platform/http/site-address.ts";
import { Outbox } from "../../platform/mail/outbox.ts";
import { noticeList } from "./notices.queries.ts";

export type News = { organization: string; kind: NoticeKind; subject: string; vehicle: string };

/** Tells every member of an organization what happened: in the application, and by mail. */
@Injectable()
export class NoticesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly outbox: Outbox,
    private readonly site: SiteAddress,
  ) {}

  async tell(tx: Transaction, { organization, kind, subject, vehicle }: News): Promise<void> {
    const members = await tx.membership.findMany({
      where: { organizationId: organization },
      select: { accountId: true, account: { select: { email: true } } },
    });
    const createdAt = this.clock.now();
    for (const { accountId, account } of members) {
      await tx.notice.create({
        data: { id: this.ids.next(), accountId, kind, subject, vehicleId: vehicle, createdAt },
      });
      await this.outbox.enqueue(tx, {
        recipient: account.email,
        ...newsLetter(kind, this.site.base),
      });
    }
  }

  async list(actor: Actor, query: PageQuery): Promise<JsonText> {
    return readPage(this.database, {
      name: "notice-list",
      text: noticeList,
      values: [actor.account, readCursor(query), query.limit],
    });
  }

  async markRead(actor: Actor, { upTo }: NoticesRead): Promise<void> {
    await this.database.transaction((tx) =>
      tx.notice.updateMany({
        where: { accountId: actor.account, id: { lte: upTo }, readAt: null },
        data: { readAt: this.clock.now() },
      }),
    );
  }
}
