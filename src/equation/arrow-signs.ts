import type { Arrow } from './equation.js'

/** Single characters that stand between the two sides, by their meaning. */
export const arrowSigns: Readonly<Record<Arrow, string>> = {
  stoichiometric: '=＝',
  forward: '→⟶⇒⟹⇾⟼↦➔➙➛➜➝➞➡⇨⭢',
  'both-directions': '⇄⇆↔⟷⇔⟺⇿',
  equilibrium: '⇌⇋',
}

/** Single characters that point from the right to the left. */
export const reversedSigns = '←⟵⇐⟸⬅⇦⭠'

/** How each kind of arrow is written in each style. */
export const writtenArrows: Readonly<
  Record<Arrow, { readonly plain: string; readonly sign: string; readonly latex: string }>
> = {
  stoichiometric: { plain: '=', sign: '=', latex: '=' },
  forward: { plain: '->', sign: '→', latex: '\\rightarrow' },
  'both-directions': { plain: '<->', sign: '⇄', latex: '\\rightleftarrows' },
  equilibrium: { plain: '<=>', sign: '⇌', latex: '\\rightleftharpoons' },
}
