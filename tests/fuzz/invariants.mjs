/** What must hold of whatever a reader accepts. Each check throws where it does not. */
import assert from 'node:assert/strict'
import * as s from 'saltwright'
import { calculationFromJSON, calculationToJSON } from 'saltwright/quantity'

const { isSaltwrightError } = s

/** Runs what may refuse politely; anything else that is thrown goes on. */
export function allowed(run) {
  try {
    return run()
  } catch (error) {
    if (isSaltwrightError(error)) return undefined
    throw error
  }
}

export function checkQuantity(q) {
  assert.ok(q.value.isFinite(), 'the value is finite')
  assert.ok(Object.isFrozen(q) && Object.isFrozen(q.naming) && Object.isFrozen(q.input), 'frozen')
  assert.ok(q.significantFigures === null || (Number.isInteger(q.significantFigures) && q.significantFigures >= 0))
  const shown = q.toString()
  assert.ok(!/\b(NaN|Infinity|undefined)\b/.test(shown), shown)
  const again = s.quantity(shown)
  assert.equal(again.toString(), shown, 'what is written reads back')
  assert.equal(again.unit, q.unit)
  if (q.significantFigures !== null && !again.value.isZero()) assert.equal(again.place, q.place, `place of ${shown}`)
  JSON.parse(JSON.stringify(q))
  const stated = q.input?.uncertainty
  if (stated !== undefined) checkUncertainty(q, stated.standard)
}

function checkUncertainty(q, standard) {
  assert.ok(standard.isFinite() && !standard.isNegative(), 'an uncertainty is zero or more')
  const written = allowed(() => s.writeWithUncertainty(q))
  if (written === undefined || standard.isZero()) return
  const back = s.quantity(written)
  assert.equal(back.unit, q.unit)
  const ratio = back.input.uncertainty.standard.div(standard).toNumber()
  assert.ok(ratio > 0.94 && ratio < 1.06, `${written} for ${standard}`)
}

export function checkNumeral(text, count) {
  assert.ok(Number.isInteger(count.figures) && count.figures >= 1)
  assert.equal(typeof count.ambiguous, 'boolean')
  const q = s.quantity(text)
  assert.equal(q.unit, '1')
  if (!q.value.isZero()) assert.equal(q.significantFigures, count.figures)
  assert.equal(q.value.toString(), s.exact(text).value.toString())
}

const same = (a, b) => a.numerator === b.numerator && a.denominator === b.denominator
const times = (a, b) => ({ numerator: a.numerator * b.numerator, denominator: a.denominator * b.denominator })
const plus = (a, b) => ({
  numerator: a.numerator * b.denominator + b.numerator * a.denominator,
  denominator: a.denominator * b.denominator,
})
const equal = (a, b) => a.numerator * b.denominator === b.numerator * a.denominator
const zero = { numerator: 0n, denominator: 1n }

function sameAtoms(one, other, why) {
  assert.deepEqual([...one.keys()].sort(), [...other.keys()].sort(), why)
  for (const [symbol, count] of one) assert.ok(equal(count, other.get(symbol)), `${why}: ${symbol}`)
}

export function checkFormula(formula) {
  assert.ok(Object.isFrozen(formula) && Object.isFrozen(formula.parts) && Object.isFrozen(formula.notes), 'frozen')
  assert.ok(Number.isInteger(formula.charge))
  for (const [symbol, count] of formula.counts) {
    assert.ok(count.numerator > 0n && count.denominator > 0n, `${symbol} counts more than nothing`)
    assert.ok(formula.composition.get(symbol).isFinite())
  }
  for (const { position, message } of formula.notes) {
    assert.ok(position.start >= 0 && position.end <= formula.text.length && position.start < position.end, message)
  }
  checkParts(formula)
  for (const style of ['plain', 'unicode']) {
    const again = s.parseFormula(s.formatFormula(formula, style))
    sameAtoms(again.counts, formula.counts, `${formula} in ${style}`)
    assert.equal(again.charge, formula.charge, `charge of ${formula} in ${style}`)
    assert.equal(String(again.hydration), String(formula.hydration), `water of ${formula} in ${style}`)
    assert.equal(s.formatFormula(again, style), s.formatFormula(formula, style))
  }
  for (const style of ['html', 'latex']) s.formatFormula(formula, style)
  checkRest(formula)
}

function checkParts({ parts, counts, charge, text }) {
  if (parts.some((part) => part.times === null)) return
  const sums = new Map()
  let charges = zero
  for (const part of parts) {
    for (const [symbol, count] of part.counts) {
      sums.set(symbol, plus(sums.get(symbol) ?? zero, times(count, part.times)))
    }
    charges = plus(charges, times({ numerator: BigInt(part.charge), denominator: 1n }, part.times))
  }
  sameAtoms(sums, counts, `parts of ${text}`)
  assert.ok(equal(charges, { numerator: BigInt(charge), denominator: 1n }), `charges of the parts of ${text}`)
}

function checkRest(formula) {
  const dry = allowed(() => s.anhydrous(formula))
  if (dry !== undefined) assert.ok(dry.hydration?.isZero(), `${formula} without water is ${dry}`)
  allowed(() => s.hillFormula(formula))
  allowed(() => s.systematicName(formula))
  const mass = allowed(() => s.molarMass(formula))
  if (mass === undefined) return
  assert.ok(mass.value.gt(0) && mass.value.isFinite(), `the mass of ${formula}`)
  const shares = [...s.massFractions(formula).values()].reduce((sum, share) => sum + share.value.toNumber(), 0)
  assert.ok(Math.abs(shares - 1) < 1e-12, `the mass fractions of ${formula} add up to ${shares}`)
}

/** Atoms and charge of one side, counted here and not by the library. */
function totals(terms) {
  const sums = new Map([['charge', zero]])
  for (const { coefficient, formula } of terms) {
    for (const [symbol, count] of formula.counts) {
      sums.set(symbol, plus(sums.get(symbol) ?? zero, times(coefficient, count)))
    }
    const charge = { numerator: BigInt(formula.charge), denominator: 1n }
    sums.set('charge', plus(sums.get('charge'), times(coefficient, charge)))
  }
  return sums
}

function isConserved({ left, right }) {
  const [before, after] = [totals(left), totals(right)]
  return [...new Set([...before.keys(), ...after.keys()])].every((key) =>
    equal(before.get(key) ?? zero, after.get(key) ?? zero),
  )
}

export function checkEquation(equation) {
  const terms = [...equation.left, ...equation.right]
  assert.ok(Object.isFrozen(equation) && Object.isFrozen(equation.left) && terms.every(Object.isFrozen), 'frozen')
  assert.ok(equation.left.length > 0 && equation.right.length > 0)
  assert.ok(terms.every(({ coefficient }) => coefficient.numerator > 0n && coefficient.denominator > 0n))
  const again = s.parseEquation(s.formatEquation(equation, 'plain'))
  assert.equal(s.formatEquation(again, 'plain'), s.formatEquation(equation, 'plain'))
  for (const [index, term] of [...again.left, ...again.right].entries()) {
    assert.ok(same(term.coefficient, terms[index].coefficient), `coefficients of ${equation}`)
    sameAtoms(term.formula.counts, terms[index].formula.counts, String(equation))
  }
  const check = allowed(() => s.checkBalance(equation))
  if (check !== undefined) assert.equal(check.balanced, isConserved(equation), `checkBalance of ${equation}`)
  if (check?.suggestion !== undefined) assert.ok(isConserved(check.suggestion), `suggested for ${equation}`)
  if (check?.missing !== undefined) assert.ok(isConserved(check.missing.equation), `missing from ${equation}`)
  checkBalanced(equation)
}

function checkBalanced(equation) {
  const balanced = allowed(() => s.balance(equation, { wrongSide: 'move' }))
  if (balanced === undefined) return
  assert.ok(isConserved(balanced), `${equation} balanced is ${balanced}`)
  assert.equal(String(s.balance(balanced)), String(balanced), 'balancing twice changes nothing')
  assert.ok([...balanced.left, ...balanced.right].every(({ coefficient }) => coefficient.denominator === 1n))
}

/** Every number of a result is one, and all of it can be JSON. */
export function checkNumbers(value, isNumber = Number.isFinite) {
  if (typeof value === 'number') assert.ok(isNumber(value), `${value} is no number`)
  if (typeof value !== 'object' || value === null || s.isFormula(value)) return
  if (s.isQuantity(value)) assert.ok(value.value.isFinite(), `${value} is no number`)
  else for (const part of Object.values(value)) checkNumbers(part, isNumber)
}

function checkJson(value) {
  checkNumbers(value)
  return JSON.stringify(value)
}

/** Decimals are left out: decimal.js never changes one, and neither do we. */
export function isFrozen(value) {
  if (typeof value !== 'object' || value === null || s.isQuantity(value) || s.isFormula(value)) return true
  return Object.isFrozen(value) && Object.values(value).every(isFrozen)
}

const formats = ['text', 'markdown', 'html', 'latex']

export function checkPlan(plan) {
  assert.ok(isFrozen(plan), 'frozen')
  const text = checkJson(plan)
  assert.equal(checkJson(s.planPreparation(JSON.parse(JSON.stringify(plan.recipe)))), text, 'the same plan again')
  for (const stage of plan.stages) assert.ok(isConserved(stage.equation), String(stage.equation))
  assert.ok(isConserved(plan.overall), String(plan.overall))
  assert.ok(plan.supplies.every(({ amount, measure }) => !amount.value.isNegative() && !measure.value.isNegative()))
  assert.ok(
    plan.leftovers.every(({ amount }) => !amount.value.isNegative()),
    'nothing is less than nothing',
  )
  assert.ok(!plan.theoretical.mass.value.isNegative())
  assert.ok(plan.cautions.at(-1).code === 'deferral')
  checkMass(plan)
  for (const format of formats) s.benchSheet(plan, format)
}

/** What is in the liquor has nothing that did not come in: every element of it is one of the supplies or of water. */
function checkMass({ supplies, leftovers, product, recipe }) {
  const unlimited = recipe.supplies.filter(({ form }) => form === 'unlimited').map(({ substance }) => substance)
  const sources = ['H2O', ...unlimited, ...supplies.map(({ substance }) => substance)]
  const known = new Set(sources.flatMap((text) => [...s.parseFormula(text).counts.keys()]))
  for (const formula of [product.formula, ...leftovers.map((portion) => portion.formula)]) {
    for (const symbol of s.parseFormula(formula).counts.keys()) assert.ok(known.has(symbol), `${symbol} from nowhere`)
  }
}

export function checkAssessment(assessment) {
  assert.ok(isFrozen(assessment), 'frozen')
  checkJson(assessment)
  assert.ok(assessment.percentYield.value.isFinite())
  for (const format of formats) s.assessmentSheet(assessment, format)
}

/** Up to the last of the 34 digits that a result is worked out with. */
function isAtLeast(one, other) {
  return one.value.minus(other.value).gte(other.value.times('-1e-32'))
}

export function checkClass(plan) {
  assert.ok(isFrozen(plan), 'frozen')
  checkJson(plan)
  for (const { total, withSpare, toPrepare } of plan.store) {
    assert.ok(isAtLeast(withSpare, total) && isAtLeast(toPrepare, withSpare), 'spare and containers only add')
  }
  for (const format of formats) s.preparationRoomSheet(plan, format)
  const rows = s.classCsv(plan).split('\r\n')
  assert.ok(rows.length >= plan.benches.length + 2)
}

/** What was read from JSON is saved and read again as the same, and says the same of itself. */
export function checkSaved(quantities) {
  const saved = JSON.stringify(calculationToJSON(quantities))
  const again = calculationFromJSON(JSON.parse(saved))
  assert.equal(JSON.stringify(calculationToJSON(again)), saved)
  for (const [index, q] of quantities.entries()) {
    assert.ok(q.value.isFinite() && Object.isFrozen(q) && Object.isFrozen(q.operands) && Object.isFrozen(q.settings))
    assert.equal(again[index].toString(), q.toString())
    assert.equal(again[index].significantFigures, q.significantFigures)
    const before = allowed(() => s.standardUncertainty(q).toString())
    assert.equal(
      allowed(() => s.standardUncertainty(again[index]).toString()),
      before,
    )
    allowed(() => s.working(q))
  }
}
