const states = ['(s)', '(l)', '(g)', '(aq)']

/** Whether a physical state in brackets stands at this place. */
export function startsWithState(text: string, at: number): boolean {
  return states.some((state) => text.startsWith(state, at))
}
