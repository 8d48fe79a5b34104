/** An element of a document, as far as a test looks at it. */
export interface Element {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: Element[]
  text: string
}

/** Reads XML without comments and namespaces of its own; throws where a tag does not close, or an attribute has no quotes. */
export function readXml(text: string): Element {
  const body = text.replace(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n/, '')
  if (body === text) throw new Error('no declaration')
  const root: Element = { name: '', attributes: {}, children: [], text: '' }
  const open: Element[] = [root]
  let at = 0
  while (at < body.length) {
    const next = body.indexOf('<', at)
    const end = next < 0 ? body.length : next
    open.at(-1)!.text += unescaped(body.slice(at, end))
    if (next < 0) break
    const close = body.indexOf('>', next)
    readTag(body.slice(next + 1, close), open)
    at = close + 1
  }
  if (open.length !== 1) throw new Error(`${open.at(-1)?.name} is not closed`)
  return root.children[0]!
}

function readTag(tag: string, open: Element[]): void {
  if (tag.startsWith('/')) {
    if (open.pop()?.name !== tag.slice(1)) throw new Error(`${tag} closes nothing`)
    return
  }
  const isEmpty = tag.endsWith('/')
  const [, name, rest] = /^([\w-]+)([\s\S]*)$/.exec(isEmpty ? tag.slice(0, -1) : tag) ?? []
  const attributes = Object.fromEntries(
    [...(rest ?? '').matchAll(/([\w:-]+)="([^"<]*)"/g)].map(([, key, value]) => [key, unescaped(value!)]),
  )
  if ((rest ?? '').replace(/[\w:-]+="[^"<]*"/g, '').trim() !== '') throw new Error(`bad attributes: ${rest}`)
  const element: Element = { name: name!, attributes, children: [], text: '' }
  open.at(-1)!.children.push(element)
  if (!isEmpty) open.push(element)
}

function unescaped(text: string): string {
  if (/&(?!#\d+;)/.test(text)) throw new Error(`a bare ampersand: ${text}`)
  return text.replace(/&#(\d+);/g, (_, code) => String.fromCharCode(Number(code)))
}

/** All elements of a name, anywhere below. */
export function all(element: Element, name: string): readonly Element[] {
  return element.children.flatMap((child) => [...(child.name === name ? [child] : []), ...all(child, name)])
}
