/** Prints every mutant that no test noticed, as soon as that is known. */
import { readFileSync } from 'node:fs'
import { relative } from 'node:path'
import { commonTokens, declareClassPlugin, PluginKind, tokens } from '@stryker-mutator/api/plugin'
import { isSampled } from './sample.mjs'

class Survivors {
  static inject = tokens(commonTokens.options)
  #sample

  constructor({ sample }) {
    this.#sample = sample
  }

  onMutantTested(mutant) {
    const survived = mutant.status === 'Survived' || mutant.status === 'NoCoverage'
    if (survived && isSampled(mutant, this.#sample)) console.log(changeOf(mutant))
  }
}

/** Where a mutant stands, what stood there, and what it put there. */
function changeOf({ fileName, location: { start, end }, mutatorName, replacement, status }) {
  const lines = readFileSync(fileName, 'utf8')
    .split('\n')
    .slice(start.line - 1, end.line)
  lines.push(lines.pop().slice(0, end.column - 1))
  lines.unshift(lines.shift().slice(start.column - 1))
  const brief = (text) => text.replace(/\s+/g, ' ').slice(0, 160)
  const place = `${relative(process.cwd(), fileName)}:${start.line}:${start.column}`
  return `${place} ${status} ${mutatorName}\n  - ${brief(lines.join('\n'))}\n  + ${brief(replacement)}`
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Reporter, 'survivors', Survivors)]
