export { ReadingsModule } from "./readings.module.ts";
