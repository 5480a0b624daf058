export { CarriedHandOversService } from "./carried-hand-overs.service.ts";
export { CarriedPicturesService } from "./carried-pictures.service.ts";
export { HandOversModule } from "./hand-overs.module.ts";
export { HandOversService } from "./hand-overs.service.ts";
