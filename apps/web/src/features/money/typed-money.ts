import { Currency } from "@evenhand/shared/currency";
import { minorDigits, parseMoney } from "../../ui/money";

/** An amount as it stands in its fields. */
export interface TypedMoney {
  readonly amount: string;
  readonly currency: string;
}

interface Money {
  readonly minor: number;
  readonly currency: string;
}

export const isCurrency = (code: string): boolean => Currency.safeParse(code).success;

export const amountText = ({ minor, currency }: Money): string => {
  const digits = minorDigits(currency);
  return String(Number((minor / 10 ** digits).toFixed(digits)));
};

export const typedMoney = (money: Money | null | undefined, otherwise: string): TypedMoney =>
  money ? { amount: amountText(money), currency: money.currency } : { amount: "", currency: otherwise };

/** `null` where it is no amount, or its currency is none. */
export const moneyOf = ({ amount, currency }: TypedMoney): Money | null =>
  isCurrency(currency) ? parseMoney(amount, currency) : null;
