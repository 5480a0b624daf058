export { InstrumentsModule } from "./instruments.module.ts";
export { FirmInstrumentsService } from "./firm-instruments.service.ts";
