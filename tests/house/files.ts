import { readdirSync, readFileSync } from 'node:fs'

/** The folder that holds the whole project. */
export const root: URL = new URL('../../', import.meta.url)

/** What is generated and never committed: the names in `.gitignore`, and the repository itself. */
const generated = ['.git', ...read('.gitignore').split('\n').filter(Boolean)].map((line) => line.replace(/\/$/, ''))

/** The content of a file, named from the root. */
export function read(path: string): string {
  return readFileSync(new URL(path, root), 'utf8')
}

/** The entries of a folder that are ours to keep, sorted. */
export function entries(folder = ''): string[] {
  return readdirSync(new URL(folder, root))
    .filter((name) => !generated.includes(folder + name) && !generated.includes(name) && !name.endsWith('.tgz'))
    .sort()
}

/** Every file under a folder (named with its slash), as paths from the root. */
export function filesUnder(folder: string): string[] {
  return readdirSync(new URL(folder, root), { withFileTypes: true })
    .filter(({ name }) => entries(folder).includes(name))
    .flatMap((entry) => (entry.isDirectory() ? filesUnder(`${folder}${entry.name}/`) : [folder + entry.name]))
}
