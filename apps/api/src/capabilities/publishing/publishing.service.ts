import { Inject, Injectable } from "@nestjs/common";
import type { CreatedDraft, PageQuery } from "@evenhand/shared/http/paging";
import {
  ListingSeen,
  type ShareLinkCreated,
  type ShareLinkRequest,
  type WithdrawRequest,
} from "@evenhand/shared/http/publishing";
import type { PictureSize } from "@evenhand/shared/evidence";
import type { FastifyRequest } from "fastify";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Actors } from "../../platform/auth/actors.ts";
import { readSessionCookie } from "../../platform/auth/cookie.ts";
import { hashSecret, newSecret } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { CONFIG, type Config } from "../../platform/config/index.ts";
import { keepOpenWithin, oneAtATime } from "../../platform/database/bounds.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { findRow, IdRow } from "../../platform/database/rows.ts";
import type { FileAnswer } from "../../platform/http/file-answer.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { PictureFiles } from "../evidence/index.ts";
import { readOpenFaults, VehiclesService } from "../vehicles/index.ts";
import { listing, sharedPicture, sharedStatement, shareLinks } from "./publishing.queries.ts";

const year = 366 * 86_400_000;
const Listing = z.object({ own: z.boolean(), body: ListingSeen.omit({ openFaults: true }) });
/** Of a statement that may not be shown there is no document. The rest is passed on as it is. */
const Shared = z.object({
  document: z.instanceof(Uint8Array).nullable(),
  body: z.string(),
  blind: z.boolean(),
  unknown: z.boolean(),
});

const FileRow = z.object({ file: z.string() });

/** Links to one car's statement that work at once. Common practice, no source. */
const mostLinks = 100;

async function keepLinksWithin(tx: Transaction, vehicle: string, now: Date): Promise<void> {
  await oneAtATime(tx, "share links", vehicle);
  keepOpenWithin(
    await tx.shareLink.count({ where: { vehicleId: vehicle, revokedAt: null, expiresAt: { gt: now } } }),
    mostLinks,
    `${mostLinks} links to this car's statement work, as many as may at once. Revoke those that are not needed.`,
  );
}

/** Statements in public: the listing of a car, and links for people who are not signed in. */
@Injectable()
export class PublishingService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly vehicles: VehiclesService,
    private readonly actors: Actors,
    private readonly pictures: PictureFiles,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async get(actor: Actor, vehicle: string): Promise<ListingSeen> {
    const row = await findRow(this.database, Listing, {
      name: "listing",
      text: listing,
      values: [actor.organizations(), vehicle],
    });
    const { own, body } = found(row, "car");
    return { ...body, openFaults: own ? await readOpenFaults(this.database, vehicle) : [] };
  }

  publish(tx: Transaction, actor: Actor, vehicle: string, meant: number): Promise<CreatedDraft> {
    return this.vehicles.publish(tx, actor, vehicle, meant, { listed: true });
  }

  withdraw(
    tx: Transaction,
    actor: Actor,
    vehicle: string,
    meant: number,
    { reason }: WithdrawRequest,
  ): Promise<CreatedDraft> {
    return this.vehicles.publish(tx, actor, vehicle, meant, { listed: false, reason });
  }

  async share(actor: Actor, vehicle: string, { name, expires }: ShareLinkRequest): Promise<ShareLinkCreated> {
    await this.requireOwn(actor, vehicle);
    const [now, until] = [this.clock.now(), new Date(expires)];
    if (until <= now || until.getTime() - now.getTime() > year)
      throw new ProblemError("expiry-too-far", "A link expires within a year, and not in the past.", {
        problems: [{ at: "/expires", reason: "after now, within a year" }],
      });
    const [id, token] = [this.ids.next(), newSecret()];
    await this.database.transaction(async (tx) => {
      await keepLinksWithin(tx, vehicle, now);
      await tx.shareLink.create({
        data: {
          id,
          vehicleId: vehicle,
          name,
          tokenHash: hashSecret(token),
          createdBy: actor.account,
          createdAt: now,
          expiresAt: until,
          reads: 0,
        },
      });
    });
    return { id, token, path: `/shared/${token}` };
  }

  async links(actor: Actor, vehicle: string, query: PageQuery): Promise<JsonText> {
    await this.requireOwn(actor, vehicle);
    return readPage(this.database, {
      name: "share-links",
      text: shareLinks,
      values: [vehicle, readCursor(query), query.limit],
    });
  }

  async revoke(actor: Actor, id: string): Promise<void> {
    const row = await findRow(this.database, IdRow, {
      text: `UPDATE share_link s SET revoked_at = coalesce(s.revoked_at, $3) FROM vehicle v
        WHERE s.id = $2 AND v.id = s.vehicle_id AND v.organization_id = ANY($1::uuid[]) RETURNING s.id`,
      values: [actor.organizations("dealer"), id, this.clock.now()],
    });
    found(row, "link");
  }

  /**
   * The published statement, to whoever holds the link, and noted as shown to whoever is signed in; not to an inspector who must
   * not know yet what it says, nor, while one is at work on the car, to a reader nobody knows.
   */
  async shared(request: FastifyRequest, secret: string): Promise<JsonText> {
    const actor = await this.findReader(request);
    const values = this.reading(actor, secret);
    const row = await findRow(this.database, Shared, { text: sharedStatement, values });
    const { document, body, blind, unknown } = found(row, "statement");
    if (blind) throw notFound("statement");
    if (unknown)
      throw new ProblemError(
        "being-inspected",
        "An inspector is at work on this car, and must not know yet what is stated of it. Sign in to read it now, or open the link again when the inspection is sealed.",
      );
    const bytes = found(document, "statement");
    return new JsonText(`${body.slice(0, -1)},"document":${Buffer.from(bytes).toString("utf8")}}`);
  }

  /** A photograph of that statement, to whom it would be shown at this moment. */
  async sharedPicture(
    request: FastifyRequest,
    secret: string,
    id: string,
    size: PictureSize,
  ): Promise<FileAnswer> {
    const values = [...this.reading(await this.findReader(request), secret), id];
    const row = await findRow(this.database, FileRow, { text: sharedPicture, values });
    return this.pictures.copy(found(row, "picture").file, size);
  }

  private reading(actor: Actor | null, secret: string): unknown[] {
    const [account, now] = [actor?.account ?? null, this.clock.now()];
    return [actor?.organizations() ?? [], Buffer.from(hashSecret(secret)), account, now];
  }

  /** Whoever is signed in beside the link is known by their session, a program by its token. */
  private async findReader(request: FastifyRequest): Promise<Actor | null> {
    const token = /^Bearer (\S+)$/i.exec(request.headers.authorization ?? "")?.[1];
    if (token !== undefined) return this.actors.findByToken(token);
    const session = readSessionCookie(request, this.config);
    return session === null ? null : this.actors.findBySession(session, true);
  }

  private async requireOwn(actor: Actor, vehicle: string): Promise<void> {
    const row = await findRow(this.database, IdRow, {
      text: "SELECT id FROM vehicle WHERE id = $2 AND organization_id = ANY($1::uuid[])",
      values: [actor.organizations("dealer"), vehicle],
    });
    found(row, "car");
  }
}
