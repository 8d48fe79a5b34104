import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))

// Tests of the source see src under the package's own name, so that coverage counts; examples see dist, as a user does.
const sourceAlias = [
  { find: /^saltwright$/, replacement: `${root}src/index.ts` },
  { find: /^saltwright\/(.+)$/, replacement: `${root}src/$1/index.ts` },
]
const examples = 'tests/documentation/generated/**/*.test.ts'

export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        resolve: { alias: sourceAlias },
        test: {
          name: 'source',
          include: ['tests/**/*.test.{ts,mjs}'],
          exclude: [examples],
          isolate: false,
          setupFiles: ['tests/setup.ts'],
        },
      },
      { root, test: { name: 'examples', include: [examples], isolate: false } },
    ],
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      exclude: ['src/**/index.ts'],
      reporter: [['text', { skipFull: true }], 'html'],
      thresholds: { lines: 100, functions: 100, branches: 100, statements: 100 },
    },
  },
})
