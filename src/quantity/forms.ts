import type { DisplayForms } from '../display.js'

/** Signs of units that typesetting writes otherwise. */
const signs: Readonly<Record<string, string>> = { '%': '\\%', '°': '^\\circ ', '·': '\\cdot ', ' ': '\\,' }

/** How a notebook shows a number with its unit. */
export function formsOf(text: string): DisplayForms {
  return { 'text/plain': text, 'text/html': text.replace(' ', '&nbsp;'), 'text/latex': `$${asLatex(text)}$` }
}

function asLatex(text: string): string {
  const [number = '', ...unit] = text.split(' ')
  const [digits = '', exponent] = number.split('e')
  const power = exponent === undefined ? '' : ` \\times 10^{${exponent.replace('+', '')}}`
  return unit.length === 0
    ? digits + power
    : `${digits}${power}\\;\\mathrm{${unit.join(' ').replace(/[%°· ]/g, (sign) => signs[sign] as string)}}`
}
