import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))

/** The tests of the source alone, without those of the project's shape and the long ones. */
export default defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^saltwright$/, replacement: `${root}src/index.ts` },
      { find: /^saltwright\/(.+)$/, replacement: `${root}src/$1/index.ts` },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: [
      'tests/documentation/**',
      'tests/house/**',
      'tests/package/**',
      'tests/fuzz/**',
      'tests/review/honesty.test.ts',
    ],
    isolate: false,
    setupFiles: ['tests/setup.ts'],
  },
})
