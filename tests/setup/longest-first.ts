import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Files that take longest though they are short: begun last, each would run on alone after all others are done. */
const longest = [
  "browser/at-length/walk",
  "browser/axe",
  "browser/booking",
  "browser/settled-and-carried",
  "browser/story",
];

const turn = ({ moduleId }: TestSpecification): number => {
  const at = longest.findIndex((name) => moduleId.endsWith(`/tests/${name}.test.ts`));
  return at === -1 ? longest.length : at;
};

/** The longest files begin first; the rest in the usual order, by size. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const usual = await super.sort(files);
    return usual.toSorted((a, b) => turn(a) - turn(b));
  }
}
