import { Readable } from "node:stream";
import { Controller, Req, Res } from "@nestjs/common";
import { UploadAnnounced } from "@evenhand/shared/http/evidence";
import type { FastifyReply, FastifyRequest } from "fastify";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { holdAgainst } from "../../platform/http/contract.pipe.ts";
import { readAnnounced } from "./read-announced.ts";
import { TusDoor } from "./tus-door.ts";
import { UploadsService } from "./uploads.service.ts";

/** Files arrive by tus 1.0. Who may send is asked here; the protocol is the library's. */
@Controller()
export class UploadsController {
  constructor(
    private readonly uploads: UploadsService,
    private readonly door: TusDoor,
  ) {}

  @Route("uploads.create")
  async create(
    @By() actor: Actor,
    @Id() report: string,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const announced = await holdAgainst(UploadAnnounced, readAnnounced(request.headers), "body");
    const id = await this.uploads.announce(actor, report, UploadAnnounced.parse(announced));
    return this.door.pass(request, reply, { id, body: null });
  }

  @Route("uploads.get")
  async get(
    @By() actor: Actor,
    @Id() id: string,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const progress = await this.uploads.get(actor, id);
    if (request.method !== "HEAD") return progress;
    return this.door.pass(request, reply, { id, body: null });
  }

  @Route("uploads.append")
  async append(
    @By() actor: Actor,
    @Id() id: string,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    await this.uploads.get(actor, id);
    const body = request.body instanceof Readable ? request.body : null;
    return this.door.pass(request, reply, { id, body });
  }
}
