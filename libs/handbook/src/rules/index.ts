import type { Rule } from "../define-rule/index.ts";
import { chargingRule } from "../charging/rule.ts";
import { chassisPatternRule } from "../chassis-pattern/rule.ts";
import { claimsAgainstDatesRule } from "../claims-against-dates/rule.ts";
import { compressionRule } from "../compression/rule.ts";
import { crankingRule } from "../cranking/rule.ts";
import { cylinderStoryRule } from "../cylinder-story/rule.ts";
import { dateCorrectRule } from "../date-correct/rule.ts";
import { dateOrderRule } from "../date-order/rule.ts";
import { decadeLessRule } from "../decade-less/rule.ts";
import { displacementRule } from "../displacement/rule.ts";
import { firstColorRule } from "../first-color/rule.ts";
import { gapTaperRule } from "../gap-taper/rule.ts";
import { inUseFreePlayRule } from "../in-use-free-play/rule.ts";
import { inUseLiningRule } from "../in-use-lining/rule.ts";
import { inUseRunoutRule } from "../in-use-runout/rule.ts";
import { inUseToeRule } from "../in-use-toe/rule.ts";
import { inUseTreadRule } from "../in-use-tread/rule.ts";
import { leakDownRule } from "../leak-down/rule.ts";
import { odometerRule } from "../odometer/rule.ts";
import { odometerDisclosureRule } from "../odometer-disclosure/rule.ts";
import { oilPressureRule } from "../oil-pressure/rule.ts";
import { originalPaintRule } from "../original-paint/rule.ts";
import { paintMapRule } from "../paint-map/rule.ts";
import { panelColorRule } from "../panel-color/rule.ts";
import { partialVinRule } from "../partial-vin/rule.ts";
import { ratioCombinedRule } from "../ratio-combined/rule.ts";
import { roadRatioRule } from "../road-ratio/rule.ts";
import { sameNumberRule } from "../same-number/rule.ts";
import { speedometerRule } from "../speedometer/rule.ts";
import { squareRule } from "../square/rule.ts";
import { tachometerRule } from "../tachometer/rule.ts";
import { teethRule } from "../teeth/rule.ts";
import { tireAgeRule } from "../tire-age/rule.ts";
import { tireDiameterRule } from "../tire-diameter/rule.ts";
import { tiresMixedRule } from "../tires-mixed/rule.ts";
import { turnsRatioRule } from "../turns-ratio/rule.ts";
import { actualMilesRule } from "../actual-miles/rule.ts";
import { rebuiltEngineRule } from "../rebuilt-engine/rule.ts";
import { numberEndsAlikeRule } from "../number-ends-alike/rule.ts";
import { vacuumRule } from "../vacuum/rule.ts";
import { vinFormRule } from "../vin-form/rule.ts";
import { vinReadingRule } from "../vin-reading/rule.ts";
import { vinYearRule } from "../vin-year/rule.ts";
import { wearMilesRule } from "../wear-miles/rule.ts";

/** Every rule of the handbook, in the order of the Handbook page. Everything else that lists rules is made from this. */
const handbook = [
  vinFormRule,
  vinYearRule,
  vinReadingRule,
  sameNumberRule,
  chassisPatternRule,
  partialVinRule,
  numberEndsAlikeRule,
  dateOrderRule,
  dateCorrectRule,
  decadeLessRule,
  claimsAgainstDatesRule,
  tireAgeRule,
  tiresMixedRule,
  tireDiameterRule,
  speedometerRule,
  tachometerRule,
  roadRatioRule,
  turnsRatioRule,
  teethRule,
  ratioCombinedRule,
  displacementRule,
  compressionRule,
  leakDownRule,
  rebuiltEngineRule,
  cylinderStoryRule,
  vacuumRule,
  oilPressureRule,
  chargingRule,
  crankingRule,
  paintMapRule,
  originalPaintRule,
  firstColorRule,
  panelColorRule,
  gapTaperRule,
  squareRule,
  inUseTreadRule,
  inUseLiningRule,
  inUseFreePlayRule,
  inUseToeRule,
  inUseRunoutRule,
  odometerRule,
  actualMilesRule,
  odometerDisclosureRule,
  wearMilesRule,
] as const;

type Defined = (typeof handbook)[number];
export type RuleId = Defined["id"];
export type LimitId = Defined["limits"][number];

/** A rule of the handbook with its id and the figures it judges by. */
export type HandbookRule = Omit<Rule, "id" | "limits"> & {
  readonly id: RuleId;
  readonly limits: readonly LimitId[];
};

export const rules: readonly HandbookRule[] = handbook;

const byId: ReadonlyMap<string, HandbookRule> = new Map(rules.map((rule) => [rule.id, rule]));

/**
 * The rule of an id, if the handbook has it.
 *
 * @example findRule("square")?.title // "Square"
 */
export const findRule = (id: string): HandbookRule | undefined => byId.get(id);
