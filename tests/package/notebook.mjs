import { execFileSync } from 'node:child_process'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** What the cells of the notebook have to show, by the form in which they show it. */
const expected = [
  ['text/html', 'ZnSO<sub>4</sub>·7H<sub>2</sub>O'],
  ['text/html', '→'],
  ['text/latex', '$287.54\\;\\mathrm{g/mol}$'],
  ['text/html', '<th align="left">zinc oxide</th><td>3.255 g</td>'],
  ['text/html', '<th align="left">percent yield</th><td>64.45 %</td>'],
  ['text/plain', 'Review of 6.458 g: slip'],
]

/**
 * Executes the example notebook headless, in the Deno kernel, and looks at what its cells show.
 *
 * @param {string} folder - Where the notebook stands, beside or below `node_modules`.
 * @param {{ deno: string, jupyter: string }} programs - Paths of both.
 */
export function checkNotebook(folder, { deno, jupyter }) {
  let missing = expected
  for (let times = 0; times < attempts && missing.length > 0; times += 1)
    missing = missingFrom(shownBy(folder, deno, jupyter))
  if (missing.length > 0)
    throw new Error(`no cell shows ${missing.map(([form, part]) => `“${part}” as ${form}`).join(', ')}`)
}

/** The kernel may say that it is done before its last result has arrived, and that one is then lost. */
const attempts = 5

function missingFrom(shown) {
  return expected.filter(([form, part]) => !shown.some((data) => textOf(data[form]).includes(part)))
}

/** What the cells show when the notebook is executed. */
function shownBy(folder, deno, jupyter) {
  const env = { ...process.env, JUPYTER_PATH: kernelsIn(folder, deno), JUPYTER_PLATFORM_DIRS: '0' }
  const options = ['--to', 'notebook', '--execute', '--output', 'executed.ipynb', '--ExecutePreprocessor.timeout=120']
  execFileSync(jupyter, ['nbconvert', ...options, 'preparation.ipynb'], { cwd: folder, env, stdio: 'pipe' })
  const { cells } = JSON.parse(readFileSync(join(folder, 'executed.ipynb'), 'utf8'))
  return cells.flatMap(({ outputs = [] }) => outputs.flatMap(({ data }) => (data === undefined ? [] : [data])))
}

/** A kernel specification of our own, so that nothing is installed for the user. */
function kernelsIn(folder, deno) {
  const kernel = join(folder, 'jupyter/kernels/deno')
  mkdirSync(kernel, { recursive: true })
  const argv = [deno, 'jupyter', '--kernel', '--conn', '{connection_file}']
  writeFileSync(join(kernel, 'kernel.json'), JSON.stringify({ argv, display_name: 'Deno', language: 'typescript' }))
  return join(folder, 'jupyter')
}

function textOf(data = '') {
  return Array.isArray(data) ? data.join('') : data
}
