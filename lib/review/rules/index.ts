import type { Rule } from '../rule'
import { aidLeftIn } from './aid-left-in'
import { brakesNotTested } from './brakes-not-tested'
import { cautionIncomplete } from './caution-incomplete'
import { cautionLate } from './caution-late'
import { correctedValue } from './corrected-value'
import { directionDisagrees } from './direction-disagrees'
import { driverNotNamed } from './driver-not-named'
import { edgeInWord } from './edge-in-word'
import { emptyMark } from './empty-mark'
import { hazardNoCaution } from './hazard-no-caution'
import { licensedWork } from './licensed-work'
import { limitNotMarked } from './limit-not-marked'
import { lockNotRemoved } from './lock-not-removed'
import { marksCross } from './marks-cross'
import { needsLater } from './needs-later'
import { noDisposal } from './no-disposal'
import { noEquipment } from './no-equipment'
import { noFunctionTest } from './no-function-test'
import { noInterval } from './no-interval'
import { noLeakTest } from './no-leak-test'
import { noLockout } from './no-lockout'
import { noRetorque } from './no-retorque'
import { noRotationCheck } from './no-rotation-check'
import { noVerbFirst } from './no-verb-first'
import { notClosed } from './not-closed'
import { notLowered } from './not-lowered'
import { notReconnected } from './not-reconnected'
import { notRefilled } from './not-refilled'
import { notRefitted } from './not-refitted'
import { notReopened } from './not-reopened'
import { notTightened } from './not-tightened'
import { nothingToSee } from './nothing-to-see'
import { numberNotSaid } from './number-not-said'
import { orderNotMarked } from './order-not-marked'
import { orderUnlikeTalk } from './order-unlike-talk'
import { outsideFootage } from './outside-footage'
import { powerNotRestored } from './power-not-restored'
import { preparationLate } from './preparation-late'
import { runUnready } from './run-unready'
import { safetyDeviceNotTested } from './safety-device-not-tested'
import { severalNames } from './several-names'
import { shopHazard } from './shop-hazard'
import { shopName } from './shop-name'
import { shopPhrase } from './shop-phrase'
import { signalWord } from './signal-word'
import { specConflict } from './spec-conflict'
import { specEquivalent } from './spec-equivalent'
import { specImplausible } from './spec-implausible'
import { specNoBasis } from './spec-no-basis'
import { specNoTolerance } from './spec-no-tolerance'
import { specNoUnit } from './spec-no-unit'
import { specTorque } from './spec-torque'
import { specVague } from './spec-vague'
import { stepLate } from './step-late'
import { textContradictsSpec } from './text-contradicts-spec'
import { toldLate } from './told-late'
import { tooLong } from './too-long'
import { toolCannotVerify } from './tool-cannot-verify'
import { toolNotListed } from './tool-not-listed'
import { toolNotUsed } from './tool-not-used'
import { twoActions } from './two-actions'
import { unexplainedShortForm } from './unexplained-short-form'
import { vagueThing } from './vague-thing'
import { warningNotMarked } from './warning-not-marked'

/** Every rule, in the order the docs list them: order, wholeness, specs, danger, language, talk, marks, the shop's own. */
export const RULES: readonly Rule[] = [
  cautionLate,
  stepLate,
  toldLate,
  orderUnlikeTalk,
  preparationLate,
  needsLater,
  runUnready,
  notRefitted,
  notClosed,
  notReopened,
  notRefilled,
  notReconnected,
  notTightened,
  powerNotRestored,
  lockNotRemoved,
  notLowered,
  aidLeftIn,
  noLeakTest,
  noFunctionTest,
  brakesNotTested,
  safetyDeviceNotTested,
  noRetorque,
  noRotationCheck,
  noDisposal,
  noInterval,
  noEquipment,
  specNoUnit,
  specNoTolerance,
  specNoBasis,
  specVague,
  specConflict,
  textContradictsSpec,
  specEquivalent,
  specImplausible,
  specTorque,
  toolCannotVerify,
  hazardNoCaution,
  noLockout,
  cautionIncomplete,
  signalWord,
  licensedWork,
  noVerbFirst,
  twoActions,
  tooLong,
  vagueThing,
  directionDisagrees,
  severalNames,
  unexplainedShortForm,
  orderNotMarked,
  warningNotMarked,
  limitNotMarked,
  correctedValue,
  numberNotSaid,
  toolNotListed,
  toolNotUsed,
  driverNotNamed,
  outsideFootage,
  emptyMark,
  marksCross,
  edgeInWord,
  nothingToSee,
  shopPhrase,
  shopHazard,
  shopName,
]
