/**
 * The 118 elements and their atomic weights: the IUPAC table in two precisions, and sets of one's own.
 *
 * @module element
 */
export { abridgedWeights } from './abridged-weights.js'
export { atomicWeight } from './atomic-weight.js'
export { type AtomicWeightSet, type AtomicWeights, atomicWeightSet } from './atomic-weight-set.js'
export { type ElementCode, ElementError } from './element-error.js'
export { elementInfo } from './element-info.js'
export { type ElementInfo, elements } from './elements.js'
export { standardWeights } from './standard-weights.js'
