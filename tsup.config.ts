import { readFileSync } from 'node:fs'
import { defineConfig } from 'tsup'

// The export map is the one list of entry points: "./formula" means src/formula/index.ts.
const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> }
const doors = Object.keys(exports).filter((key) => !key.endsWith('.json'))
const entry = Object.fromEntries(
  doors.map((key) =>
    key === '.' ? ['index', 'src/index.ts'] : [`${key.slice(2)}/index`, `src/${key.slice(2)}/index.ts`],
  ),
)

/** The declarations; `.config/rollup.mjs` writes the code. */
export default defineConfig({
  entry,
  format: ['esm', 'cjs'],
  tsconfig: 'src/tsconfig.json',
  dts: { only: true, compilerOptions: { ignoreDeprecations: '6.0' } }, // TypeScript 6 deprecates the baseUrl that tsup sets
})
