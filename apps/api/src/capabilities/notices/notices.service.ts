import { Injectable } from "@nestjs/common";
import { mailTime, type MailTime } from "@evenhand/case/news-mail";
import { type Due, deadlineLetter, type Letter, newsLetter } from "@evenhand/wording/letter";
import type { DeadlineStep } from "@evenhand/shared/http/cases";
import {
  NewsChoice,
  type NewsChoiceRequest,
  type NewsKind,
  NewsMail,
  type NoticeKind,
  type NoticesRead,
} from "@evenhand/shared/http/notices";
import type { PageQuery } from "@evenhand/shared/http/paging";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { findRow } from "../../platform/database/rows.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { SiteAddress } from "../../platform/http/site-address.ts";
import { Outbox } from "../../platform/mail/outbox.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { newsPaths } from "./news-paths.ts";
import { newsChoice, noticeList } from "./notices.queries.ts";

/** `vehicle`: the car, or the first of them. */
type About = { organization: string; subject: string; vehicle: string };
export type News = About & { kind: NewsKind };
/** `subject`: what the page is about where it is done; `path`: that page of the site. */
type NearDeadline = About & { due: Omit<Due, "link">; path: string };

type Written = About & { kind: NoticeKind; dueAt: Date | null; step: DeadlineStep | null };

/** How a notice stands with the mail when it is written. */
const mailings: Readonly<Record<MailTime, string>> = { now: "mailed", morning: "waiting", never: "none" };

/** Tells every member of an organization what happened: in the application, and by mail as each chose. */
@Injectable()
export class NoticesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly outbox: Outbox,
    private readonly site: SiteAddress,
  ) {}

  async tell(tx: Transaction, news: News): Promise<void> {
    const link = this.site.base.concat(newsPaths[news.kind](news));
    await this.write(tx, { ...news, dueAt: null, step: null }, newsLetter(news.kind, link));
  }

  /** Tells of a deadline that nears, with the way to where it is met. */
  async remind(tx: Transaction, { due, path, ...about }: NearDeadline): Promise<void> {
    const letter = deadlineLetter({ ...due, link: this.site.base.concat(path) });
    const { step } = due;
    await this.write(tx, { ...about, kind: "deadline-near", dueAt: new Date(due.due), step }, letter);
  }

  private async write(tx: Transaction, written: Written, letter: Letter): Promise<void> {
    const { organization, vehicle, ...told } = written;
    const members = await tx.membership.findMany({
      where: { organizationId: organization },
      select: { accountId: true, account: { select: { email: true, newsMail: true } } },
    });
    const createdAt = this.clock.now();
    for (const { accountId, account } of members) {
      const time = mailTime(told.kind, NewsMail.parse(account.newsMail));
      const mailing = mailings[time];
      await tx.notice.create({
        data: { ...told, id: this.ids.next(), accountId, vehicleId: vehicle, createdAt, mailing },
      });
      if (time === "now") await this.outbox.enqueue(tx, { recipient: account.email, ...letter });
    }
  }

  async choice({ account: id }: Actor): Promise<NewsChoice> {
    return readChoice(this.database, id);
  }

  /** What was gathered already still comes with the next morning's letter, unless no news is wanted by mail any more. */
  async choose({ account: id }: Actor, { mail, zone }: NewsChoiceRequest): Promise<NewsChoice> {
    return this.database.transaction(async (tx) => {
      await tx.account.update({
        where: { id },
        data: { newsMail: mail, newsZone: zone },
        select: { id: true },
      });
      if (mail === "deadlines")
        await tx.notice.updateMany({
          where: { accountId: id, mailing: "waiting" },
          data: { mailing: "none" },
        });
      return readChoice(tx, id);
    });
  }

  async list(actor: Actor, query: PageQuery): Promise<JsonText> {
    return readPage(this.database, {
      name: "notice-list",
      text: noticeList,
      values: [actor.organizations(), readCursor(query), query.limit, actor.account],
    });
  }

  async markRead(actor: Actor, read: NoticesRead): Promise<void> {
    await this.database.transaction((tx) =>
      tx.notice.updateMany({
        where: {
          accountId: actor.account,
          id: "only" in read ? read.only : { lte: read.upTo },
          readAt: null,
        },
        data: { readAt: this.clock.now() },
      }),
    );
  }
}

const readChoice = async (from: Database | Transaction, account: string): Promise<NewsChoice> =>
  found(await findRow(from, NewsChoice, { text: newsChoice, values: [account] }), "account");
