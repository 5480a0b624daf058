import { Injectable, type OnModuleInit } from "@nestjs/common";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { Arrivals } from "./arrivals.ts";
import { EvidenceSweep } from "./evidence-sweep.ts";

/** Each file that has come whole, and every hour what nobody waits for any more. */
@Injectable()
export class EvidenceJobs implements OnModuleInit {
  constructor(
    private readonly jobs: Jobs,
    private readonly arrivals: Arrivals,
    private readonly sweeping: EvidenceSweep,
  ) {}

  onModuleInit(): void {
    this.jobs.register("evidence", (id) => this.arrivals.take(id));
    this.jobs.register("evidence-sweep", () => this.sweeping.sweep());
  }
}
