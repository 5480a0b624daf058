import { CarriedPictureQuery } from "@evenhand/shared/http/hand-overs";
import { Controller, Query, Req } from "@nestjs/common";
import type { FastifyRequest } from "fastify";
import { Id, Secret } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { photographIn } from "../evidence/index.ts";
import { CarriedPicturesService } from "./carried-pictures.service.ts";

/** Photographs by the carrier's link. */
@Controller()
export class CarriedPicturesController {
  constructor(private readonly pictures: CarriedPicturesService) {}

  @Route("carriedHandOvers.addPicture")
  add(
    @Secret() secret: string,
    @Query({ schema: CarriedPictureQuery }) query: CarriedPictureQuery,
    @Req() request: FastifyRequest,
  ) {
    return this.pictures.add(secret, query, photographIn(request.body));
  }

  @Route("carriedHandOvers.picture")
  picture(@Secret() secret: string, @Id() id: string) {
    return this.pictures.picture(secret, id);
  }

  @Route("carriedHandOvers.removePicture")
  remove(@Secret() secret: string, @Id() id: string) {
    return this.pictures.remove(secret, id);
  }
}
