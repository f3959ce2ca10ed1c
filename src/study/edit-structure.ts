import type { Case } from '../case/case.ts';
import { setBasis } from '../case/edits/basis-edits.ts';
import { setCarbonPrice } from '../case/edits/carbon-price-edits.ts';
import type { Edit } from '../case/edits/edit.ts';
import { isLotsEdit, withLots } from '../case/edits/lots-edits.ts';
import { setInvestment } from '../case/edits/investment-edits.ts';
import { isWhatIfEdit, withWhatIf } from '../case/edits/what-if-edits.ts';
import {
  addGrade,
  addLine,
  balanceBy,
  duplicateLine,
  moveLine,
  removeGrade,
  removeLine,
} from '../case/edits/line-edits.ts';
import {
  compareRoutes,
  duplicateRoute,
  moveRoute,
  removeRoute,
  renameRoute,
  setService,
} from '../case/edits/route-edits.ts';
import { addStage, duplicateStage, moveStage, removeStage, setUpStage } from '../case/edits/stage-edits.ts';
import { setWasteCode } from '../case/edits/waste-code-edits.ts';
import { isTrustEdit, withTrust } from '../case/edits/trust-edits.ts';
import { type Outcome, outcome } from '../case/problem.ts';
import { readCase } from '../case/read-case.ts';
import { writeCase } from '../case/write-case.ts';
import { usualLine, withMaterial } from '../paper/bought-material.ts';
import { catalogueProblems } from '../paper/catalogue-problems.ts';
import { buildModel } from '../paper/model.ts';
import { priceUnits } from '../paper/materials/price-unit.ts';
import { keptActuals } from './trust/actual-problems.ts';
import { keptWhatIf } from './kept-what-if.ts';
import { lotProblems } from './lots/lot-problems.ts';
import { type OpenCase, workOut } from './open-case.ts';

/**
 * Changes the structure of a case and works it out anew. Figures that no longer belong to anything go with what they belonged to. What
 * could not be saved and read again is refused, as it would be in a file.
 */
export function editStructure(open: OpenCase, edit: Edit): Outcome<OpenCase> {
  const kept = readCase(writeCase(edited(open, edit)));
  if (!kept.ok) return kept;
  // What suppliers offer does not touch the model, which stays as it is.
  if (isLotsEdit(edit)) return outcome({ ...open, content: kept.value }, lotProblems(kept.value));
  // A change of structure leaves names behind that nothing bears any more. What is asked anew and names nothing is refused instead.
  const isAsked = isWhatIfEdit(edit) || (isTrustEdit(edit) && edit.kind !== 'set price terms');
  return workOut(isAsked ? kept.value : withoutOrphans(kept.value));
}

function edited(open: OpenCase, edit: Edit): Case {
  const { content } = open;
  if (isWhatIfEdit(edit)) return withWhatIf(content, edit);
  if (isTrustEdit(edit)) return withTrust(content, edit, (terms) => priceUnits(terms, content.currency));
  if (isLotsEdit(edit)) return withLots(content, edit);
  switch (edit.kind) {
    case 'add stage':
      return addStage(content, edit, edit.like, edit.at);
    case 'remove stage':
      return removeStage(content, edit);
    case 'duplicate stage':
      return duplicateStage(content, edit);
    case 'move stage':
      return moveStage(content, edit, edit.to);
    case 'set up stage':
      return setUpStage(content, edit, edit.options);
    case 'add line': {
      const wider = withMaterial(content, edit.material);
      const line = usualLine(wider, edit.material);
      return line === null ? content : addLine(wider, edit.route, line);
    }
    case 'remove line':
      return removeLine(content, edit.route, edit.line);
    case 'duplicate line':
      return duplicateLine(content, edit.route, edit.line);
    case 'move line':
      return moveLine(content, edit.route, edit.line, edit.to);
    case 'balance by line':
      return balanceBy(content, edit.route, edit.line, shareOf(open, edit.route));
    case 'add grade':
      return addGrade(withMaterial(content, edit.material), edit.route, edit.line, edit.material);
    case 'remove grade':
      return removeGrade(content, edit.route, edit.line, edit.material);
    case 'duplicate route':
      return duplicateRoute(content, edit.route);
    case 'remove route':
      return removeRoute(content, edit.route);
    case 'rename route':
      return renameRoute(content, edit.route, edit.label);
    case 'move route':
      return moveRoute(content, edit.route, edit.to);
    case 'set service':
      return setService(content, edit.route, edit.service);
    case 'compare routes':
      return compareRoutes(content, edit.base, edit.with);
    case 'set investment':
      return setInvestment(content, edit.plan);
    case 'set waste code':
      return setWasteCode(content, edit.stream, edit.code);
    case 'set carbon price':
      return setCarbonPrice(content, edit.scheme);
    case 'set basis':
      return setBasis(content, edit.basis);
  }
}

/** The share that the balancing line has now, in per cent, to nine digits: it becomes a figure of its own. */
function shareOf({ content, values }: OpenCase, routeId: string): string {
  const balance = content.routes.find((route) => route.id === routeId)?.balance ?? '';
  const id = `${routeId}.${balance}.share`;
  const share = values.has(id) ? values.number(id) : NaN;
  return Number.isFinite(share) ? String(Number((share * 100).toPrecision(9))) : '0';
}

function withoutOrphans(content: Case): Case {
  // Names that no list holds are refused where the case is worked out; a model cannot be built on them.
  if (catalogueProblems(content).length > 0) return content;
  const { problems, graph } = buildModel(content);
  const orphans = new Set(problems.flatMap((problem) => (problem.kind === 'unknown input' ? [problem.id] : [])));
  const kept =
    orphans.size === 0
      ? content
      : { ...content, inputs: Object.fromEntries(Object.entries(content.inputs).filter(([id]) => !orphans.has(id))) };
  return keptActuals(keptWhatIf(kept, graph), graph);
}
