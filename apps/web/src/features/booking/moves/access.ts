import type { VisitPlan } from "@evenhand/shared/http/booking";
import { instantOf } from "../../../entities/time/zone-time";

type ToAllow = VisitPlan["toAllow"][number];

/** What a dealer answers before confirming a visit. */
export interface Access {
  /** Car, site and lift are there at this hour. */
  readonly access: boolean;
  /** By car and item; what was not answered is not in it. */
  readonly allowed: Readonly<Record<string, boolean>>;
  /** Until when the car is kept from sale, on the site's clock as typed; empty where it is not. */
  readonly heldUntil: string;
}

export const nothingAnswered: Access = { access: false, allowed: {}, heldUntil: "" };

/** One car's item: what a permission is given for. */
export const permissionKey = ({ car, item }: ToAllow): string => `${car} ${item}`;

export const isAllowed = ({ allowed }: Access, one: ToAllow): boolean | undefined =>
  allowed[permissionKey(one)];

export const withPermission = (answers: Access, one: ToAllow, allowed: boolean): Access => ({
  ...answers,
  allowed: { ...answers.allowed, [permissionKey(one)]: allowed },
});

/** Whether it may be sent: access confirmed, and every permission answered with yes or no. */
export const mayConfirm = (answers: Access, toAllow: readonly ToAllow[]): boolean =>
  answers.access && toAllow.every((one) => isAllowed(answers, one) !== undefined);

/** As the service takes it; what is not answered is not allowed. */
export const accessBody = (answers: Access, toAllow: readonly ToAllow[], zone: string) => ({
  access: true as const,
  permissions: toAllow.map((one) => ({ ...one, allowed: isAllowed(answers, one) ?? false })),
  ...(answers.heldUntil === "" ? {} : { heldFromSaleUntil: instantOf(answers.heldUntil, zone) }),
});
