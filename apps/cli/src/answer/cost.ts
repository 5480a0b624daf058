import { matterId } from "@evenhand/shared/matter-id";
import type { Matter } from "@evenhand/shared/matter";
import type { Answer, AnswerCost } from "@evenhand/shared/page-one";

const LARGEST = 3;

const money = (minor: number, currency: string): string => {
  const format = new Intl.NumberFormat("en-US", {
    style: "currency",
    currency,
    trailingZeroDisplay: "stripIfInteger",
  });
  return format.format(minor / 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2));
};

/** What one matter is likely to add, in words; `null` where no table says. */
export const likelyWords = (matter: Matter, priced: AnswerCost | null): string | null => {
  const cost = priced?.cost ?? null;
  const part = cost?.byMatter.find((one) => one.matter === matterId(matter));
  return cost === null || part === undefined ? null : `about ${money(part.likely, cost.currency)}`;
};

/** The range beside what is asked, whose figures these are, and the three largest parts; `null` where there is no table. */
export const costWords = ({ matters, unknown }: Answer, priced: AnswerCost | null) => {
  const cost = priced?.cost ?? null;
  if (priced === null || cost === null) return null;
  const { currency, total, table, byMatter } = cost;
  const headlines = new Map(
    [...matters, ...unknown].map(({ matter }) => [matterId(matter), matter.headline]),
  );
  const asked =
    priced.asking === null
      ? "what is asked for the car was not said (--asking)"
      : `asked for the car: ${money(priced.asking.minor, priced.asking.currency)}`;
  return {
    range: `${money(total.low, currency)} to ${money(total.high, currency)}, likely ${money(total.likely, currency)}; ${asked}.`,
    largest: byMatter
      .slice(0, LARGEST)
      .map(({ matter, likely }) => `${headlines.get(matter) ?? matter}, about ${money(likely, currency)}`),
    by: `By “${table}”.`,
    from: `From the table “${table}”, to two figures; arithmetic, no valuation.`,
  };
};
