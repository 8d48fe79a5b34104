import { describe, expect, it } from 'vitest'

/** A value that a source prints, beside ours. */
export interface PublishedRow {
  /** Where in the source: table, example, exercise, row. */
  readonly at: string
  /** What it is the value of. */
  readonly what: string
  /** As printed. */
  readonly published: string
  /** What the library gives, by its public functions. */
  readonly ours: () => string
  /** Whether the two agree to the last printed digit; if not, what ours is and why. */
  readonly agrees: true | Difference
}

/** A published value that is not ours. */
export interface Difference {
  /** What ours is instead. */
  readonly ours: string
  /** Why, in words. */
  readonly differs: string
  /** The published value again, once the reason is put into the calculation, where that can be done. */
  readonly explained?: () => string
}

/** What the test run keeps of a row: a reporter finds it as `meta.published` of the test. */
export interface PublishedRecord {
  readonly source: string
  readonly at: string
  readonly what: string
  readonly published: string
  readonly ours: string
  readonly agrees: boolean
  readonly differs?: string
}

declare module 'vitest' {
  interface TaskMeta {
    published?: PublishedRecord
  }
}

/** Checks every value of one source: ours agrees to the last printed digit, or differs exactly as explained. */
export function checkPublished(source: string, rows: readonly PublishedRow[]): void {
  describe(source, () => {
    for (const row of rows) {
      it(`${row.at}: ${nameOf(row)}`, ({ task }) => {
        const ours = row.ours()
        task.meta.published = recordOf(source, row, ours)
        if (row.agrees === true) return expect(ours).toBe(row.published)
        expect(ours).toBe(row.agrees.ours)
        expect(ours).not.toBe(row.published)
        expect(row.agrees.explained?.() ?? row.published).toBe(row.published)
      })
    }
  })
}

function nameOf({ what, published, agrees }: PublishedRow): string {
  return agrees === true ? `${what} is ${published}` : `${what} is ${agrees.ours}, not ${published}: ${agrees.differs}`
}

function recordOf(source: string, { at, what, published, agrees }: PublishedRow, ours: string): PublishedRecord {
  const known = { source, at, what, published, ours }
  return agrees === true ? { ...known, agrees } : { ...known, agrees: false, differs: agrees.differs }
}
