import * as library from 'saltwright'
import { describe, textOf } from './describe.mjs'
import { instrument, runtimeName } from './instrument.mjs'

const AsyncFunction = (async () => {}).constructor

/**
 * Runs an example.
 *
 * @param {string} before - Code of the examples that it continues; runs without showing anything.
 * @param {string} code - Its own code.
 * @param {(shown: Shown) => void} show - Called for each value, print and error, in order.
 * @returns {Promise<void>} When it has run; mistakes are shown, not thrown.
 *
 * @typedef {{ kind: 'value' | 'print' | 'error', source?: string, text?: string, html?: string }} Shown
 */
export async function run(before, code, show) {
  let quiet = false
  const console = { log: (...values) => quiet || show({ kind: 'print', text: values.map(printed).join(' ') }) }
  const runtime = {
    door,
    named,
    run: async (_, evaluate) => {
      quiet = true
      await quietly(evaluate)
      quiet = false
    },
    show: (source, evaluate) => showValue(source, evaluate, show),
  }
  try {
    await new AsyncFunction(runtimeName, 'console', instrument(before, code))(runtime, console)
  } catch (error) {
    show({ kind: 'error', text: messageOf(error) })
  }
}

/** Examples also show what is refused; that was shown where the example itself stands. */
async function quietly(evaluate) {
  try {
    await evaluate()
  } catch {}
}

async function showValue(source, evaluate, show) {
  try {
    const value = await evaluate()
    if (!source.startsWith('console.')) show({ kind: 'value', source, ...describe(value) })
  } catch (error) {
    show({ kind: 'error', source, text: messageOf(error) })
  }
}

/** Every topic's names stand in the front door as well. */
function door(name) {
  if (name === 'saltwright' || name.startsWith('saltwright/')) return library
  throw new Error(`Only saltwright can be imported here, not ${name}.`)
}

function named(from, name) {
  const names = door(from)
  if (Object.hasOwn(names, name)) return names[name]
  throw new Error(`${from} exports no ${name}.`)
}

function printed(value) {
  return typeof value === 'string' ? value : textOf(value, 0)
}

function messageOf(error) {
  if (!library.isSaltwrightError(error)) return String(error)
  return [error.code, error.message, error.hint].filter(Boolean).join('\n')
}
