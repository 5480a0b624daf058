export { PublishingModule } from "./publishing.module.ts";
