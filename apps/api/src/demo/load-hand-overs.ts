import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Injectable } from "@nestjs/common";
import type { DemoHandOver } from "@evenhand/shared/demo-scenario";
import {
  CarriedHandOversService,
  CarriedPicturesService,
  HandOversService,
} from "../capabilities/hand-overs/index.ts";
import { projectFolder } from "../platform/config/project-folder.ts";
import type { DemoWorld } from "./demo-world.ts";

const linkDays = 30;
type Signed = DemoHandOver["reports"][number];

/** Sends a bought car on its way: the buyer invites a carrier, whose link signs what left and what arrived. */
@Injectable()
export class DemoHandOvers {
  constructor(
    private readonly handOvers: HandOversService,
    private readonly carried: CarriedHandOversService,
    private readonly pictures: CarriedPicturesService,
  ) {}

  async arrange(
    world: DemoWorld,
    { key, vehicle, by, arrangedAt, carrier, terms }: DemoHandOver,
  ): Promise<void> {
    const actor = world.actor(by);
    const found = await world.tx.buyerCase.findFirstOrThrow({
      where: { vehicleId: world.get("vehicle", vehicle), buyerId: { in: actor.organizations() } },
    });
    const expires = new Date(Date.parse(arrangedAt) + linkDays * 86_400_000).toISOString();
    const made = await this.handOvers.arrangeIn(world.tx, actor, found.id, { carrier, terms, expires });
    world.set("hand-over", key, made.id);
    world.set("carrier's link", key, made.token);
  }

  async sign(
    world: DemoWorld,
    { key }: DemoHandOver,
    { report, pictures, paper, driver, other }: Signed,
  ): Promise<void> {
    const token = world.get("carrier's link", key);
    for (const picture of pictures) await this.photograph(world, token, report.stage, picture);
    const { hash } = await this.carried.previewIn(world.tx, token, report);
    await this.carried.signIn(world.tx, token, { report, hash, paper, carrier: driver, other });
  }

  private async photograph(
    world: DemoWorld,
    token: string,
    stage: Signed["report"]["stage"],
    { file, item, position }: Signed["pictures"][number],
  ): Promise<void> {
    const bytes = readFileSync(join(projectFolder(), "fixtures", "demo", file));
    await this.pictures.addIn(world.tx, token, { stage, item, position }, bytes);
  }

  async claim(world: DemoWorld, { key, by }: DemoHandOver, note: string): Promise<void> {
    const id = world.get("hand-over", key);
    const { revision } = await world.tx.handOver.findUniqueOrThrow({ where: { id } });
    await this.handOvers.move(world.tx, world.actor(by), { id, revision, move: "open-claim", note });
  }
}
