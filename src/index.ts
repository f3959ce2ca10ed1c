/**
 * The engine, as its users see it: open a case, change an input, compare, explain, write it down again. All of it is pure: text and
 * numbers go in, data comes out.
 */
export { type Outcome } from './case/problem.ts';
export { kindOfLines } from './case/route-kind.ts';
export { explain } from './report/explanation-view.ts';
export type { Explanation, Ingredient } from './report/explanation.ts';
export { type BridgeBar, type BridgeLayout, layOutBridge } from './report/bridge-layout.ts';
export { type EffectSteps, type MachineEffect, machineEffectOf } from './report/machine-view.ts';
export { spreadOf } from './report/spread-view.ts';
export type * from './report/spread.ts';
export { caseText } from './study/case-text.ts';
export { type Comparison, compare } from './study/comparison.ts';
export { editStructure } from './study/edit-structure.ts';
export { type ComponentMass, type LineBalance, type StageBalance, lineBalance } from './study/line-balance.ts';
export { startCase } from './study/start-case.ts';
export { type FurnishChoice, type NewCase, type ProductChoice, productChoices } from './paper/new-case.ts';
export {
  type BasisChoices,
  type MaterialChoice,
  type StageChoice,
  basisChoices,
  materialChoices,
  stageChoices,
} from './paper/choices.ts';
export type { BasisOptions, Edit, StageOptions } from './case/edits/edit.ts';
export { type OpenCase, changeInput, openCase, restoreDefault } from './study/open-case.ts';
export { formatNumber } from './wording/number-format.ts';
export { problemSentence } from './wording/problem-sentence.ts';
export { unitLabel } from './wording/unit-label.ts';
export {
  type CauseAmount,
  type FactorUsed,
  type Footprint,
  type RouteFootprint,
  type StreamMass,
} from './study/footprint-result.ts';
export { footprint } from './study/footprint.ts';
export { type QualityRow, qualityResults } from './study/quality-results.ts';
export { gainIdOf, referenceIndexIdOf, strengthProperties } from './paper/strength-properties.ts';
export { type UsedEnergy, energyUses } from './study/energy-use.ts';
export { publicClaimCaution } from './wording/claim-caution-sentence.ts';
export { gridAttribution } from './paper/carbon-factors.ts';
export { type BreakEven, breakEven } from './study/break-even.ts';
export { type Sensitivity, type Swing, sensitivity } from './study/sensitivity.ts';
export { type Side, mostFigures, spaced, twoWay } from './study/two-way.ts';
export type { Correlation, DistributionLaw, GivenDistribution, Limit, Scenario, Uncertainty } from './case/what-if.ts';
export { distributionLaws } from './case/what-if.ts';
export type { RangeMethod } from './study/input-range.ts';
export { type LimitReading, limitReadings } from './study/limits/limit-readings.ts';
export { brokenInTable } from './study/limits/broken-in-table.ts';
export { type LargestShare, largestShare } from './study/limits/largest-share.ts';
export { changeScenario } from './study/scenarios/change-scenario.ts';
export { type ScenarioColumn, type ScenarioTable, scenarioTable } from './study/scenarios/scenario-table.ts';
export { ties } from './study/ties.ts';
export { type MonthResults, monthResults } from './study/months/month-results.ts';
export { type CellReading, readMonths } from './study/months/read-months.ts';
export { usualMonthInputs } from './study/months/usual-month-inputs.ts';
export type { PriceMonths } from './case/price-months.ts';
export { type NamedSide, type WhatIfTable, whatIfTable } from './study/what-if-table.ts';
export { type TrialSegment, TrialRun } from './study/uncertainty/run-trials.ts';
export { type TrialSummary, toldPercentiles, trialSummary } from './study/uncertainty/trial-summary.ts';
export { trialColumns, trialRows } from './study/uncertainty/trial-rows.ts';
export { type TrialPlan, trialPlan } from './study/uncertainty/trial-plan.ts';
export { uncertainty } from './study/uncertainty/uncertainty.ts';
export type { CapitalItem, InvestmentPlan, OutletYears, Support } from './case/investment-plan.ts';
export { planRowId } from './paper/investment/investment.ts';
export { estimateId } from './study/investment/estimate-range.ts';
export { npvId } from './study/investment/npv-id.ts';
export { type PlanResults, planResults } from './study/investment/plan-results.ts';
export { startPlan } from './study/investment/start-plan.ts';
export { dayText } from './case/day.ts';
export type { Actual } from './case/actuals.ts';
export type { PriceTerms } from './case/case.ts';
export { type SameProductAnswer, type SameProductReply } from './case/same-product.ts';
export { type ReconciledGroup, type ReconciledRow, reconcile } from './study/trust/reconcile.ts';
export { type SameProductStand, sameProduct } from './study/trust/same-product.ts';
export { type PriceEcho, priceEcho } from './study/trust/price-echo.ts';
export { datedInputs } from './study/trust/freshness.ts';
export type { WorkbookPlan } from './workbook/plan.ts';
export { workbookPlan } from './workbook/workbook-plan.ts';
export { shifted } from './study/rounding.ts';
export type { Alternative, Blend, Lot, LotFigure, Lots } from './case/lots.ts';
export { type LotField, changeLot, withFigure, withReadings } from './study/lots/change-lot.ts';
export { openLot } from './study/lots/open-lot.ts';
export { priceLots } from './study/lots/price-lots.ts';
export type { PricedLot } from './study/lots/priced-lot.ts';
export { type LotsView, lotsView } from './report/lots-view.ts';
export { lotsPage } from './report/lots-page.ts';
export { type GivenBlend, givenBlend } from './study/lots/blend/given-blend.ts';
export { type LeastCostBlend, leastCostBlend } from './study/lots/blend/least-cost-blend.ts';
