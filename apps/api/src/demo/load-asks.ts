import { Injectable } from "@nestjs/common";
import type { DemoComplaint, DemoQuestion } from "@evenhand/shared/demo-scenario";
import { ComplaintsService } from "../capabilities/complaints/index.ts";
import { QuestionsService } from "../capabilities/questions/index.ts";
import type { DemoWorld } from "./demo-world.ts";

/** Sends the questions and complaints that wait for an answer. */
@Injectable()
export class DemoAsks {
  constructor(
    private readonly questions: QuestionsService,
    private readonly complaints: ComplaintsService,
  ) {}

  async ask(world: DemoWorld, { vehicle, by, item, position, text }: DemoQuestion): Promise<void> {
    const request = { item, position, text, send: true };
    await this.questions.create(world.tx, world.actor(by), world.get("vehicle", vehicle), request);
  }

  async complain(world: DemoWorld, { vehicle, by, text }: DemoComplaint): Promise<void> {
    const actor = world.actor(by);
    const [organization] = actor.organizations();
    if (organization === undefined) throw new Error(`"${by}" belongs to nobody for whom to complain.`);
    const about = { kind: "vehicle" as const, id: world.get("vehicle", vehicle) };
    await this.complaints.create(world.tx, actor, { organization, about, text });
  }
}
