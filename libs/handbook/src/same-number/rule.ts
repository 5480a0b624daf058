import { normalizeVin } from "../identifier-text/index.ts";
import { saidPosition } from "../of-position/index.ts";
import { numbersOf, TITLE, VIN } from "../readers/car-numbers.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findClaim, readingsOf } from "../view/index.ts";
import type { Found, Read, View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { sameNumber } from "./index.ts";
import type { SameNumberInput } from "./index.ts";
import { sameNumberRecord } from "./record.ts";
import { resultMessages } from "../result-words/index.ts";

const placeName = ({ item, position }: Found): string => (item === TITLE ? "title" : saidPosition(position));

/** The readings that are not the one most places have; all of them where no number leads. */
const outliers = (numbers: readonly Read<"code">[]): readonly Found[] => {
  const groups = [...Map.groupBy(numbers, ({ answer }) => normalizeVin(answer.text)).values()];
  const most = Math.max(...groups.map((group) => group.length));
  const leading = groups.filter((group) => group.length === most);
  return leading.length > 1 ? numbers : groups.filter((group) => group.length < most).flat();
};

const numbersOfEach = (view: View): readonly Read<"code">[] =>
  view.readings.length === 1
    ? numbersOf(view)
    : view.readings.flatMap((side) => numbersOf(readingsOf(view, side)));

/** Every number of every side read: the plate of one report is set against the plate of the other too. */
const find = (view: View): Inputs<SameNumberInput>[] => {
  const numbers = numbersOfEach(view);
  if (numbers.length < 2) return [];
  const claim = findClaim(view, "code", TITLE) ?? findClaim(view, "code", VIN, "main-plate");
  const both = numbers.some(({ side }) => side !== numbers[0]?.side);
  const placed = numbers.map((read) => ({
    place: both
      ? resultMessages.say("place-in-report", {
          place: placeName(read),
          report: view.reports[read.side]?.report.kind ?? "",
        })
      : placeName(read),
    number: read.answer.text,
  }));
  return [{ reads: numbers, claim, bad: () => outliers(numbers), input: placed }];
};

/** sameNumber with all that belongs to it. */
export const sameNumberRule = defineRule({
  record: sameNumberRecord,
  compute: sameNumber,
  find,
  examples,
  trueClaims,
  growth,
});
