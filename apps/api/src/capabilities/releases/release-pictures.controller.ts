import { Controller, Req } from "@nestjs/common";
import type { FastifyRequest } from "fastify";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { photographIn } from "../evidence/index.ts";
import { ReleasePicturesService } from "./release-pictures.service.ts";

@Controller()
export class ReleasePicturesController {
  constructor(private readonly pictures: ReleasePicturesService) {}

  @Route("releasePictures.add")
  add(@By() actor: Actor, @Id() release: string, @Req() request: FastifyRequest) {
    return this.pictures.add(actor, release, photographIn(request.body));
  }

  @Route("releasePictures.list")
  list(@By() actor: Actor, @Id() release: string) {
    return this.pictures.list(actor, release);
  }

  @Route("releasePictures.small")
  small(@By() actor: Actor, @Id() id: string) {
    return this.pictures.copy(actor, id, "small");
  }

  @Route("releasePictures.large")
  large(@By() actor: Actor, @Id() id: string) {
    return this.pictures.copy(actor, id, "large");
  }

  @Route("releasePictures.original")
  original(@By() actor: Actor, @Id() id: string) {
    return this.pictures.original(actor, id);
  }

  @Route("releasePictures.remove")
  remove(@By() actor: Actor, @Id() id: string) {
    return this.pictures.remove(actor, id);
  }
}
