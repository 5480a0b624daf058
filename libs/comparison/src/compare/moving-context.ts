import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { Call } from "@evenhand/shared/severity";
import { callOf } from "@evenhand/sheet/call";
import type { CallContext } from "@evenhand/sheet/call";
import type { CompiledItem } from "@evenhand/sheet/compile-sheet";
import { findingOf } from "../finding-of/index.ts";
import type { Plan, PlannedPlace } from "../plan/index.ts";

/** Finds another finding of a report, of the whole car or at the same place. */
const otherFindings = ({ findings }: Report, plan: Plan, indexes: Int32Array) => {
  const at = (item: string, position: string): Finding | undefined => {
    const number = plan.numberOf(item, position);
    return number === undefined ? undefined : findingOf(findings, indexes[number] ?? -1);
  };
  return (item: string, position = ""): Finding | undefined =>
    at(item, "") ?? (position === "" ? undefined : at(item, position));
};

/** What an answer's call may hang on, moved from finding to finding of one report. */
type MovingContext = { -readonly [Part in keyof CallContext]: CallContext[Part] };

/**
 * What the calls of one report's answers may hang on, as one object that `move` sets on the place at hand: made anew for every line
 * it was a tenth of what a comparison left behind. Nobody may keep it.
 */
export const contextMover = (report: Report, plan: Plan, indexes: Int32Array) => {
  const otherFinding = otherFindings(report, plan, indexes);
  const other: CallContext["other"] = (item, position) => otherFinding(item, position)?.answer;
  const { scales } = report;
  const { form } = report.vehicle;
  const contextOf = (
    { faultKinds }: CompiledItem,
    position: string,
    { conditions }: Finding,
  ): CallContext => ({
    position,
    conditions,
    scales,
    form,
    faultKinds,
    other,
    otherCall,
  });
  /** What another item is called follows nothing in its turn. */
  const otherCall = (item: string, position = ""): Call | undefined => {
    const compiled = plan.sheet.items.get(item);
    const finding = otherFinding(item, position);
    if (compiled === undefined || finding === undefined) return undefined;
    const { otherCall: _none, ...context } = contextOf(compiled, position, finding);
    return callOf(finding.answer, compiled.item, context);
  };
  const context: MovingContext = { position: "", conditions: undefined, scales, form, other, otherCall };
  const move = ({ compiled, position, asksConditions }: PlannedPlace, finding: Finding | undefined): void => {
    context.position = position;
    context.conditions = asksConditions ? finding?.conditions : undefined;
    context.faultKinds = compiled.faultKinds;
  };
  return { context, move };
};
