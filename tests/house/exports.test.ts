import { expect, it } from 'vitest'
import { doors, exportedNames, faceOf } from './doors.js'
import { filesUnder } from './files.js'

const names = exportedNames()

function section(door: string): string {
  const rows = names.filter((name) => name.door === door).map(({ kind, name }) => `  ${kind.padEnd(8)}  ${name}`)
  return [door, ...rows].join('\n')
}

it('every topic with a face has a door, and every door a face', () => {
  const faces = filesUnder('src/').filter((file) => /^src\/([^/]+\/)?index\.ts$/.test(file))
  expect(doors.map(faceOf).sort()).toEqual(faces.sort())
})

it('nothing that was exported vanishes unseen: the list is under version control', async () => {
  await expect(`${doors.map(section).join('\n\n')}\n`).toMatchFileSnapshot('exports.txt')
})

it('the front door hands on everything that the topics export', () => {
  const front = new Set(names.filter(({ door }) => door === 'saltwright').map(({ name }) => name))
  const missing = names.filter(({ name }) => !front.has(name))
  expect(missing.map(({ door, name }) => `${door} ${name}`)).toEqual([])
})
