import type { RuleRecord } from "../rule-record/index.ts";
import { bodyRules } from "./body.ts";
import { dateRules } from "./dates.ts";
import { engineRules } from "./engine.ts";
import { identityRules } from "./identity.ts";
import { useRules } from "./use.ts";
import { wheelRules } from "./wheels.ts";

/** Every rule of the handbook by its id, in the order of the Handbook page. */
export const ruleRecords = {
  ...identityRules,
  ...dateRules,
  ...wheelRules,
  ...engineRules,
  ...bodyRules,
  ...useRules,
} as const;

export type RuleId = keyof typeof ruleRecords;
/** The reasons a rule can give. */
export type ReasonOf<Id extends RuleId> = keyof (typeof ruleRecords)[Id]["outcomes"] & string;

/** Whether a text is the id of a rule. */
export const isRuleId = (id: string): id is RuleId => Object.hasOwn(ruleRecords, id);

/** The same as one list, each with its id. */
export const rules: readonly (RuleRecord & { readonly id: RuleId })[] = Object.entries(ruleRecords).flatMap(
  ([id, record]) => (isRuleId(id) ? [{ ...record, id }] : []),
);
