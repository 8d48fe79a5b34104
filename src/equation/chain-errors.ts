import { showFound } from '../errors.js'
import { EquationError } from './equation-error.js'

/** The stages cannot be run so that the aim is met. */
export function noMultipliers(hint: string | undefined): EquationError {
  return new EquationError({
    code: 'equation/no-multipliers',
    message: 'However often each stage runs, the stages do not add up as asked.',
    expected: 'stages that make what later ones use',
    hint,
  })
}

/** The stages can be run in more than one way. */
export function undeterminedMultipliers(): EquationError {
  return new EquationError({
    code: 'equation/undetermined-multipliers',
    message: 'There is more than one way to run the stages.',
    expected: 'as many intermediates as link all stages',
    hint: 'Name more intermediates, or leave out stages that do not depend on one another.',
  })
}

/** A stage would have to run backwards. */
export function reversedStage(index: number): EquationError {
  return new EquationError({
    code: 'equation/reversed-stage',
    message: `Stage ${index + 1} would have to run backwards.`,
    path: [index],
    expected: 'stages that all run forwards',
    hint: `Write stage ${index + 1} the other way round.`,
  })
}

/** An intermediate that stands in no stage. */
export function unknownSpecies(name: string): EquationError {
  return new EquationError({
    code: 'equation/unknown-species',
    message: `${name} stands in none of the equations.`,
    found: name,
    expected: 'a species of the equations, with its state where they give one',
  })
}

/** Intermediates and an overall equation at once. */
export function twoAims(): EquationError {
  return new EquationError({
    code: 'equation/unknown-option',
    message: 'The options cancel and overall exclude one another.',
    path: ['cancel'],
    expected: 'one of the two',
  })
}

/** Intermediates that are no list. */
export function notAList(found: unknown): EquationError {
  return new EquationError({
    code: 'equation/unknown-option',
    message: `${showFound(found)} is no list of species to cancel.`,
    path: ['cancel'],
    found: showFound(found),
    expected: 'a list of formulas',
  })
}

/** More stages than anyone runs, which would take long to solve. */
export function tooManyStages(count: number, most: number): EquationError {
  return new EquationError({
    code: 'equation/too-many-stages',
    message: `A chain of ${count} stages is not solved.`,
    found: `${count} stages`,
    expected: `at most ${most} stages`,
  })
}
