import { format } from 'node:util'

/** Stands in for the console of an example, and keeps what it prints. */
export class Console {
  /** One entry per call of `log`, as Node would print it. */
  readonly printed: string[] = []

  log(...values: unknown[]): void {
    this.printed.push(format(...values))
  }

  clear(): void {
    this.printed.length = 0
  }

  /** All that was printed, without spaces at the ends of lines, which an editor would strip from a guide. */
  text(): string {
    const lines = this.printed.join('\n').split('\n')
    return lines
      .map((line) => line.trimEnd())
      .join('\n')
      .trimEnd()
  }
}

/** The code of the error that an example claims to be thrown; the error itself where it carries none. */
export async function codeOf(run: () => Promise<unknown>): Promise<unknown> {
  try {
    await run()
  } catch (error) {
    return error instanceof Error && 'code' in error ? error.code : error
  }
  return 'nothing was thrown'
}
