import { describe, expect, it } from 'vitest'
import { calls } from './calls.mjs'
import { everything } from './everything.mjs'
import { describeFinding, fuzz } from './fuzz.mjs'
import { readers } from './readers.mjs'

/** How many inputs each reader gets here; `npm run fuzz` gives it a million. */
const counts = { recipe: 150, records: 150, class: 60, everything: 1500, calls: 3000 }

describe.each([...readers, everything, calls])('$name', (reader) => {
  it('refuses politely, accepts only what holds, and is quick', { timeout: 60_000 }, () => {
    const { accepted, findings, polluted } = fuzz(withoutClock(reader), { count: counts[reader.name] ?? 2000, seed: 1 })
    expect(findings.map((finding) => describeFinding(finding))).toEqual([])
    expect(accepted).toBeGreaterThan(0)
    expect(polluted).toBe(false)
  })
})

/** Under the instruments of coverage times say little: ten times the bound is allowed. */
function withoutClock(reader) {
  const { fixed, perCharacter } = reader.limit
  return { ...reader, limit: { fixed: fixed * 10, perCharacter: perCharacter * 10 } }
}
