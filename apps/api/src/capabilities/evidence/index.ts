export { EvidenceModule } from "./evidence.module.ts";
export { EvidenceSealing } from "./evidence-sealing.ts";
