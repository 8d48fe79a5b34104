import peggy from 'peggy'

/**
 * The notation of formulas as a grammar: symbols, counts, brackets, parts between all the dots, water of unknown number, charges
 * in all spellings, electrons, states, spaces. Atoms are counted while reading, in plain numbers. Left out, to the good of the
 * generated parser, are fractions that stay exact, bounds, notes, hints, and what tells a full stop from a decimal point and a
 * charge without a caret from a count beyond the simplest cases.
 */
const grammar = String.raw`
{{
  const symbols = new Set(listOfSymbols)
  const lowered = '₀₁₂₃₄₅₆₇₈₉'
  const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹'
  const vulgar = { '¼': 0.25, '½': 0.5, '¾': 0.75, '⅓': 1 / 3, '⅔': 2 / 3 }

  function add(total, atoms, times) {
    for (const [symbol, count] of atoms) total.set(symbol, (total.get(symbol) ?? 0) + count * times)
    return total
  }
  function joined(units) {
    const atoms = new Map()
    for (const unit of units) add(atoms, unit, 1)
    return atoms
  }
  function digits(list, alphabet) {
    return list.length === 0 ? 1 : Number(list.map((one) => alphabet.indexOf(one)).join(''))
  }
}}

formula = _ first:part rest:(_ dot _ @part)* _ state:state? _ {
  const parts = [first, ...rest]
  const composition = new Map()
  let charge = 0
  for (const { times, atoms, charge: own } of parts) {
    if (times !== null) add(composition, atoms, times)
    charge += own * (times ?? 1)
  }
  return { composition, charge, parts, state }
}
part
  = times:number? _ "e" charge:charge { return { times: times ?? 1, atoms: new Map(), charge } }
  / [xn] _ water:$("H2O" / "H₂O") { return { times: null, atoms: new Map([['H', 2], ['O', 1]]), charge: 0 } }
  / times:number? _ units:units charge:(_ @charge)? { return { times: times ?? 1, atoms: units, charge: charge ?? 0 } }
units = list:(_ @unit)+ { return joined(list) }
unit = atom / group
atom = symbol:symbol count:count? { return new Map([[symbol, count ?? 1]]) }
symbol = text:$([A-Z][a-z]?) &{ return symbols.has(text) } { return text }
group = inside:inside count:count? { return add(new Map(), inside, count ?? 1) }
inside = "(" @units _ ")" / "[" @units _ "]" / "{" @units _ "}"
count = number:number !(sign _ (dot / state / !.)) { return number } / list:[₀-₉]+ { return digits(list, lowered) } / number
number
  = top:whole [/⁄∕] bottom:whole { return top / bottom }
  / top:whole? sign:[¼½¾⅓⅔] { return (top ?? 0) + vulgar[sign] }
  / text:$([0-9]+ "." [0-9]+) !(_ water) { return Number(text) }
  / whole
whole = text:$[0-9]+ { return Number(text) }
water = ("H2O" / "D2O") (!. / dot / " ")
dot = [·•∙⋅‧*×.] / "x" &(_ [0-9])
charge
  = "^" "{" @bare "}" / "^" @bare / "(" @bare ")" / list:[⁰¹²³⁴⁵⁶⁷⁸⁹]* sign:raisedSign { return sign * digits(list, raised) } / bare
bare
  = size:whole sign:sign { return sign * size }
  / sign:sign size:whole { return sign * size }
  / list:sign+ { return list.reduce((sum, one) => sum + one, 0) }
sign = "+" { return 1 } / [-−–] { return -1 }
raisedSign = "⁺" { return 1 } / "⁻" { return -1 }
state = "(" @("s" / "l" / "g" / "aq") ")"
_ = [ \u00a0\u2009\u202f\u3000]*
`

/** A parser for formulas made by a general-purpose parser generator. */
export function generatedParser(symbols) {
  return peggy.generate(grammar.replace('listOfSymbols', JSON.stringify(symbols)))
}

/** A side, an arrow and a side; charges with a caret only, for a bare sign would be a plus between two formulas. */
const equationGrammar = grammar
  .replace(
    '\nformula =',
    '\nequation = left:side _ "->" right:side { return { left, right } }\nside = first:formula rest:("+" @formula)* { return [first, ...rest] }\nformula =',
  )
  .replace(/\ncharge\n.*\n/, '\ncharge = "^" "{" @bare "}" / "^" @bare\n')

/** A parser for equations made by a general-purpose parser generator. */
export function generatedEquationParser(symbols) {
  return peggy.generate(equationGrammar.replace('listOfSymbols', JSON.stringify(symbols)), {
    allowedStartRules: ['equation'],
  })
}
