import { defineConfig } from 'vitest/config'

const root = new URL('..', import.meta.url).pathname

export default defineConfig({
  root,
  resolve: { alias: [{ find: /^saltwright$/, replacement: `${root}src/index.ts` }, { find: /^saltwright\/(.+)$/, replacement: `${root}src/$1/index.ts` }] },
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/documentation/generated/**', 'tests/package/**', 'node_modules/**'],
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      exclude: ['src/**/index.ts'],
      thresholds: { lines: 100, functions: 100, branches: 100, statements: 100 },
    },
  },
})
