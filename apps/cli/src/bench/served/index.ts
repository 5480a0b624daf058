import { withDatabase } from "../database.ts";
import type { BenchOptions, BenchRow } from "../row.ts";
import { measureCarList } from "./car-list.ts";
import { withGround } from "./ground.ts";
import { measureReads } from "./reads.ts";

/** As docker-compose.yml has it: slow work is done in a process of its own, and is none of what a read costs. */
const asComposed = { JOBS: "off" };

/** What the service costs beside the least that the same reads could cost, and what a million cars add. */
export const rows = (options: BenchOptions): Promise<BenchRow[]> =>
  withDatabase((client, url) =>
    withGround(
      client,
      url,
      async (ground) => [
        ...(await measureReads(ground, options)),
        ...(await measureCarList(ground, options)),
      ],
      asComposed,
    ),
  );
