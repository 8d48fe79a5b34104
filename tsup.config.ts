import { copyFileSync, readFileSync } from 'node:fs'
import { defineConfig } from 'tsup'

// The export map is the one list of entry points: "./formula" means src/formula/index.ts.
const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> }
const doors = Object.keys(exports).filter((key) => !key.endsWith('.json'))
const entry = Object.fromEntries(
  doors.map((key) =>
    key === '.' ? ['index', 'src/index.ts'] : [`${key.slice(2)}/index`, `src/${key.slice(2)}/index.ts`],
  ),
)

export default defineConfig({
  entry,
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  tsconfig: 'src/tsconfig.json',
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } }, // TypeScript 6 deprecates the baseUrl that tsup sets
  splitting: true, // CommonJS too: one copy of every class, whichever door it came through
  sourcemap: false, // what is published is readable as it is, and maps would be most of the package
  clean: true,
  noExternal: [/^zod/], // one file of what is used loads six times faster than the many files of the whole
  onSuccess: async () => copyFileSync('node_modules/zod/LICENSE', 'dist/LICENSE-zod.txt'),
})
