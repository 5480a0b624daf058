export { ReleasesModule } from "./releases.module.ts";
export { ReleasesService } from "./releases.service.ts";
