export { StoredRefusal, wordedRefusal } from "./stored-refusal.ts";
export { KeptPicture } from "./file-answers.ts";
export { PictureFiles } from "./picture-files.ts";
export { photographIn, readPhotograph } from "./read-photograph.ts";
export { EvidenceModule } from "./evidence.module.ts";
export { EvidenceService } from "./evidence.service.ts";
export { EvidenceSealing } from "./evidence-sealing.ts";
export { WholeFiles } from "./whole-files.ts";
