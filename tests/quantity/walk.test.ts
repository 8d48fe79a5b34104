import { describe, expect, it } from 'vitest'
import { walk } from '../../src/quantity/walk.js'

interface Item {
  readonly name: string
  readonly below: Item[]
}

function order(root: Item): { readonly names: string; readonly whole: boolean } {
  const done = new Set<Item>()
  const whole = walk(root, {
    below: ({ below }) => below,
    isDone: (one) => done.has(one),
    finish: (one) => done.add(one),
    mayLoop: true,
  })
  return { names: [...done].map(({ name }) => name).join(''), whole }
}

const item = (name: string, ...below: Item[]): Item => ({ name, below })

describe('the walk over a graph', () => {
  it('visits what lies below first, and each node once', () => {
    const shared = item('d')
    const left = item('b', shared)
    expect(order(item('a', left, item('c', left, shared, shared)))).toEqual({ names: 'dbca', whole: true })
  })

  it('takes a chain of a hundred thousand nodes', () => {
    let chain = item('x')
    for (let count = 0; count < 100_000; count += 1) chain = item('', chain)
    expect(order(chain).whole).toBe(true)
  })

  it('stops at a node that lies below itself', () => {
    const ring = item('a', item('b'))
    ring.below.push(item('c', ring))
    expect(order(ring).whole).toBe(false)
    const own = item('a')
    own.below.push(own)
    expect(order(own).whole).toBe(false)
  })

  it('needs no second walk', () => {
    const only = item('a')
    let visits = 0
    const steps = {
      below: () => [],
      isDone: () => visits > 0,
      finish: () => {
        visits += 1
      },
    }
    walk(only, steps)
    walk(only, steps)
    expect(visits).toBe(1)
  })
})
