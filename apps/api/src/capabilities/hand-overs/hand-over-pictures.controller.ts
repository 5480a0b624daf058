import { Controller } from "@nestjs/common";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { HandOverPicturesService } from "./hand-over-pictures.service.ts";

@Controller()
export class HandOverPicturesController {
  constructor(private readonly pictures: HandOverPicturesService) {}

  @Route("handOverPictures.small")
  small(@By() actor: Actor, @Id() id: string) {
    return this.pictures.copy(actor, id, "small");
  }

  @Route("handOverPictures.large")
  large(@By() actor: Actor, @Id() id: string) {
    return this.pictures.copy(actor, id, "large");
  }

  @Route("handOverPictures.original")
  original(@By() actor: Actor, @Id() id: string) {
    return this.pictures.original(actor, id);
  }
}
