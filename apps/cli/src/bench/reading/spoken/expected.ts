import { readdirSync, readFileSync } from "node:fs";
import { Vehicle } from "@evenhand/shared/report";
import { Firmness } from "@evenhand/shared/finding";
import { z } from "zod";

const Answers = z.strictObject({
  about: z.string(),
  vehicle: Vehicle,
  remarks: z.array(
    z.strictObject({
      second: z.int(),
      item: z.string(),
      positions: z.string(),
      answer: z.string(),
      firmness: Firmness,
    }),
  ),
});

/** A walkaround, and what a person takes from it. */
export type Walkaround = {
  readonly name: string;
  readonly captions: string;
  readonly vehicle: Vehicle;
  readonly remarks: readonly {
    readonly second: number;
    readonly item: string;
    readonly position: string;
    readonly answer: string;
    readonly firmness: Firmness;
  }[];
};

export type Third = "tuned" | "kept-out";

const root = new URL("../../../../../../fixtures/spoken/", import.meta.url);

/** The walkarounds of one part of the fixtures, each remark once a place. */
export const walkarounds = (third: Third): Walkaround[] =>
  readdirSync(new URL(`${third}/`, root))
    .toSorted()
    .map((name) => {
      const folder = new URL(`${third}/${name}/`, root);
      const file = readdirSync(folder).find((one) => one.startsWith("captions.")) ?? "";
      const { vehicle, remarks } = Answers.parse(
        JSON.parse(readFileSync(new URL("answers.json", folder), "utf8")),
      );
      return {
        name,
        captions: readFileSync(new URL(file, folder), "utf8"),
        vehicle,
        remarks: remarks.flatMap(({ positions, ...one }) =>
          positions.split(" ").map((position) => ({ ...one, position })),
        ),
      };
    });
