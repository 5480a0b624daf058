import {
  firmLimitProblems,
  limits,
  type LimitId,
  type LimitProblem,
  type LimitRecord,
} from "@evenhand/handbook/limits";
import { rules, type RuleId } from "@evenhand/handbook/rules";
import type { FirmLimits } from "@evenhand/shared/cross-check";
import { numberText, numberTyped } from "./typed-number";

export interface OwnLimit extends LimitRecord {
  readonly id: LimitId;
  readonly between: readonly [number, number];
}
export interface LimitGroup {
  readonly rule: RuleId;
  readonly title: string;
  readonly limits: readonly OwnLimit[];
}

const ownLimit = (id: LimitId): readonly OwnLimit[] => {
  const record: LimitRecord = limits[id];
  return record.firmMaySet && record.between !== undefined
    ? [{ ...record, id, between: record.between }]
    : [];
};

/** Figures a firm may set, each once, under the first rule that judges by it. */
export const limitGroups: readonly LimitGroup[] = (() => {
  const placed = new Set<LimitId>();
  return rules.flatMap(({ id: rule, title, limits: used }): LimitGroup[] => {
    const own = used.filter((id) => !placed.has(id)).flatMap(ownLimit);
    for (const { id } of own) placed.add(id);
    return own.length === 0 ? [] : [{ rule, title, limits: own }];
  });
})();

const ownLimits = limitGroups.flatMap((group) => group.limits);
export const ownLimitCount = ownLimits.length;

/** By limit; empty is the handbook's own figure. */
export type LimitsTyped = Readonly<Record<string, string>>;

export const typedLimits = (stored: FirmLimits): LimitsTyped =>
  Object.fromEntries(ownLimits.map(({ id }) => [id, numberText(stored[id])]));

export const isSet = (typed: LimitsTyped, id: LimitId): boolean => (typed[id] ?? "").trim() !== "";

/** As the service takes them. */
export const limitsOf = (typed: LimitsTyped): FirmLimits =>
  Object.fromEntries(
    ownLimits.filter(({ id }) => isSet(typed, id)).map(({ id }) => [id, numberTyped(typed[id] ?? "")]),
  );

/** What keeps a typed figure from being taken. */
export const limitWrong = (
  typed: LimitsTyped,
  id: LimitId,
): "not-a-number" | LimitProblem["reason"] | undefined => {
  if (!isSet(typed, id)) return undefined;
  const value = numberTyped(typed[id] ?? "");
  return Number.isNaN(value) ? "not-a-number" : firmLimitProblems({ [id]: value })[0]?.reason;
};

export const wrongLimits = (typed: LimitsTyped): readonly LimitId[] =>
  ownLimits.flatMap(({ id }) => (limitWrong(typed, id) === undefined ? [] : [id]));
