import type { Rule } from '../rule'
import { specNoBasis } from './spec-no-basis'
import { specNoTolerance } from './spec-no-tolerance'
import { specNoUnit } from './spec-no-unit'

/** Every rule, in the order the docs list them. */
export const RULES: readonly Rule[] = [specNoUnit, specNoTolerance, specNoBasis]
