export { InputError, isInputError, type InputErrorCode } from './InputError.js';
export { plainError, type PlainError } from './plainError.js';
export { reasons, type ReasonEntry } from './reasons.js';
export { required, type Failure, type Outcome, type Success } from './Outcome.js';
/** @internal */
export { baseUnits, unitInWords } from './Quantity.js';
/** @internal */
export { columnUnits } from './columns.js';
export { type BaseUnit, type Quantity } from './Quantity.js';
export { type Finding, type Severity, type Subject } from './Finding.js';
export { catalogue, type FindingCode } from './catalogue.js';
export { type FindingEntry } from './FindingEntry.js';
export {
  type ColumnName,
  type CurveColumns,
  type PressureColumns,
  type PressureRecord,
  type StressStrainCurve,
  type TensionColumns,
  type TensionRecord,
} from './columns.js';
export { type RecordChange, type TrailStep } from './TrailStep.js';
export { trailSentences, type TrailCode, type TrailSentence } from './trailSentences.js';
/** @internal */
export { trailStep, trailValue } from './TrailStep.js';
export { type Section, type SectionShape } from './Section.js';
export { type AfterFracture, type SubdividedLengths, type TestPiece, type UnbrokenPiece } from './TestPiece.js';
/** @internal */
export { notLoaded, saying } from './optionalLibrary.js';
/** @internal */
export { failure, success } from './Outcome.js';
/** @internal */
export { finding, type FindingDetails } from './Finding.js';
/** @internal */
export { toldOnce } from './toldOnce.js';
/** @internal */
export { quoted, shownList } from './InputError.js';
/** @internal */
export { atExtension, isSameExtension, PROOF_OFFSET, requireExtension, requireExtensions } from './proofOffset.js';
/** @internal */
export { requireSection } from './requireSection.js';
/** @internal */
export {
  LARGEST_READING,
  isDivisor,
  requireArray,
  requireBoolean,
  requireFunction,
  requireWords,
  requireBetween,
  requireColumn,
  requireDay,
  requireDivisor,
  requireFinite,
  requireList,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requireOptions,
  requirePair,
  requirePositive,
  requireProbability,
  requireText,
  requireWhole,
  soundLength,
  type ColumnRule,
} from './checks.js';
