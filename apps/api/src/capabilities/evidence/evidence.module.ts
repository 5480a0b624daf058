import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { Arrivals } from "./arrivals.ts";
import { EvidenceController } from "./evidence.controller.ts";
import { EvidenceJobs } from "./evidence-jobs.ts";
import { EvidenceSealing } from "./evidence-sealing.ts";
import { EvidenceService } from "./evidence.service.ts";
import { EvidenceSweep } from "./evidence-sweep.ts";
import { KeptFiles } from "./kept-files.ts";
import { LookAlikes } from "./look-alikes.ts";
import { PartStore } from "./part-store.ts";
import { PictureFiles } from "./picture-files.ts";
import { PictureProcess } from "./picture-process.ts";
import { TusDoor } from "./tus-door.ts";
import { UploadsController } from "./uploads.controller.ts";
import { UploadsService } from "./uploads.service.ts";
import { WholeFiles } from "./whole-files.ts";

@Module({
  imports: [MailModule],
  controllers: [UploadsController, EvidenceController],
  providers: [
    UploadsService,
    PartStore,
    TusDoor,
    EvidenceService,
    EvidenceSealing,
    KeptFiles,
    LookAlikes,
    PictureProcess,
    Arrivals,
    EvidenceSweep,
    EvidenceJobs,
    WholeFiles,
    PictureFiles,
  ],
  exports: [EvidenceSealing, EvidenceService, WholeFiles, PictureFiles],
})
export class EvidenceModule {}
